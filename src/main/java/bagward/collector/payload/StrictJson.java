package bagward.collector.payload;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;

/** JSON from strangers: bounded in depth and length, no NaN, no member twice, nothing after the document. */
final class StrictJson {
    private static final ObjectMapper READER = new ObjectMapper(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(32)
                            .maxNumberLength(Numbers.LONGEST)
                            .maxStringLength(MessageDecoder.LONGEST_PAYLOAD)
                            .maxNameLength(1000)
                            .maxDocumentLength(MessageDecoder.LONGEST_PAYLOAD)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private StrictJson() {}

    /** @throws RefusedPayloadException if it is not one JSON document within the bounds */
    static JsonNode parse(byte[] payload) {
        try {
            JsonNode document = READER.readTree(payload);
            if (document.isMissingNode()) {
                throw new RefusedPayloadException("the payload is empty where JSON is expected");
            }
            return document;
        } catch (JsonProcessingException e) {
            throw new RefusedPayloadException("not readable as JSON: " + Texts.oneLine(e.getOriginalMessage()), e);
        } catch (IOException e) {
            throw new RefusedPayloadException("not readable as JSON: the bytes are not valid UTF-8", e);
        }
    }
}
