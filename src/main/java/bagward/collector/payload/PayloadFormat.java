package bagward.collector.payload;

import java.util.List;

/** How the messages of a sensor are written. */
public sealed interface PayloadFormat permits SelfContained, SparkplugDevice {
    /** What is read from it. */
    List<Place> places();
}
