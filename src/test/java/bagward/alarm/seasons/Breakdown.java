package bagward.alarm.seasons;
import bagward.mould.*;
import java.util.*;
import java.nio.file.*;
final class Breakdown {
  public static void main(String[] a) throws Exception {
    List<Organism> all = OrganismsReader.parse("o", Files.readString(Path.of("seeds/organisms.yaml")));
    List<MouldSeason> seasons = MouldSeasons.seasons(40000, 30);
    MouldRuleCaller own = (MouldRuleCaller) MouldSeasons.own().get(2);
    MouldRuleCaller est = (MouldRuleCaller) MouldSeasons.own().get(1);
    for (MouldWorld w : MouldWorld.values()) {
      System.out.println(w);
      for (Organism o : all) {
        System.out.println(Tally.of(new MouldRuleCaller(o.id()+" true", own.rule(), List.of(o), own.climate(), false), w, seasons).line());
        System.out.println(Tally.of(new MouldRuleCaller(o.id()+" est", own.rule(), List.of(o), est.climate(), false), w, seasons).line());
      }
    }
  }
}
