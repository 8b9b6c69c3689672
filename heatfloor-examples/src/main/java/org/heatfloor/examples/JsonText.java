package org.heatfloor.examples;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** From a file to a JSON object: plain JSON in UTF-8, within limits, every key once, nothing after it. */
final class JsonText {

    static final int MOST_BYTES = 2_000_000;
    static final int DEEPEST = 50;
    private static final int LONGEST_STRING = 200_000;
    private static final int LONGEST_NUMBER = 50;
    private static final int LONGEST_KEY = 200;

    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxStringLength(LONGEST_STRING)
                            .maxNumberLength(LONGEST_NUMBER)
                            .maxNameLength(LONGEST_KEY)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    // Off by default; said once more, since a room file is plain JSON.
                    .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                    .build())
            .build();

    private JsonText() {}

    static ObjectNode read(Path file) throws BadRoomFile {
        return parse(text(bytes(file)));
    }

    private static byte[] bytes(Path file) throws BadRoomFile {
        if (Files.isDirectory(file)) {
            throw new BadRoomFile("file", "a folder", "a room file");
        }
        if (!Files.exists(file)) {
            throw new BadRoomFile("file", "nothing (no such file)", "a room file");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            throw new BadRoomFile("file", "nothing (" + e.getClass().getSimpleName() + ")", "a file that can be read");
        }
        if (bytes.length > MOST_BYTES) {
            throw new BadRoomFile("file", "more than " + MOST_BYTES + " bytes", "a file of at most that size");
        }
        return bytes;
    }

    private static String text(byte[] bytes) throws BadRoomFile {
        if (bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF) {
            throw new BadRoomFile("file", "a byte order mark", "UTF-8 text without a byte order mark");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadRoomFile("file", "bytes that are not UTF-8", "text in UTF-8");
        }
    }

    private static ObjectNode parse(String text) throws BadRoomFile {
        try (JsonParser parser = MAPPER.createParser(text)) {
            JsonNode node;
            try {
                node = MAPPER.readTree(parser);
                if (node instanceof ObjectNode room) {
                    if (parser.nextToken() != null) {
                        throw new BadRoomFile("file", "more text after the room" + place(parser), "one JSON object");
                    }
                    return room;
                }
            } catch (JsonProcessingException e) {
                throw syntax(parser, e);
            }
            String read = text.isBlank() || node == null ? "an empty file" : kind(node);
            throw new BadRoomFile("file", read, "a JSON object");
        } catch (IOException e) {
            throw new BadRoomFile("file", "nothing (" + e.getClass().getSimpleName() + ")", "a file that can be read");
        }
    }

    private static BadRoomFile syntax(JsonParser parser, JsonProcessingException e) {
        String key = path(parser.getParsingContext());
        String said = String.valueOf(e.getOriginalMessage());
        String where = place(parser);
        if (e instanceof StreamConstraintsException) {
            return new BadRoomFile(
                    key,
                    "something too large" + where,
                    "nesting to at most " + DEEPEST + ", strings to " + LONGEST_STRING + ", keys to " + LONGEST_KEY
                            + " and numbers to " + LONGEST_NUMBER + " characters");
        }
        if (e instanceof JsonEOFException) {
            return new BadRoomFile(key, "the end of the file" + where, "the rest of the JSON object");
        }
        if (said.startsWith("Duplicate field")) {
            return new BadRoomFile(key, "the same key a second time" + where, "each key once");
        }
        if (said.contains("NaN") || said.contains("INF") || said.contains("Infinity")) {
            return new BadRoomFile(key, "a number that is not finite" + where, "a plain JSON number");
        }
        String shortened = said.lines().findFirst().orElse("").toLowerCase(Locale.ROOT);
        return new BadRoomFile(
                key, "text that is not JSON" + where + " (" + Fault.quoted(shortened) + ")", "plain JSON");
    }

    private static String place(JsonParser parser) {
        return " at line " + parser.currentLocation().getLineNr() + ", column "
                + parser.currentLocation().getColumnNr();
    }

    /** The key path of a place in the text, {@code file} at the top. */
    private static String path(JsonStreamContext context) {
        JsonStreamContext parent = context.getParent();
        String before = parent == null ? "" : path(parent);
        String here = before.equals("file") ? "" : before;
        if (context.inArray()) {
            here += "[" + Math.max(0, context.getCurrentIndex()) + "]";
        } else if (context.inObject() && context.hasCurrentName()) {
            here += (here.isEmpty() ? "" : ".") + context.getCurrentName();
        }
        return here.isEmpty() ? "file" : here;
    }

    /** What a JSON value is, in words. */
    static String kind(JsonNode node) {
        return switch (node.getNodeType()) {
            case OBJECT -> "an object";
            case ARRAY -> "a list";
            case STRING -> "the string " + Fault.quoted(node.textValue());
            case NUMBER -> "the number " + node.asText();
            case BOOLEAN -> node.asText();
            case NULL -> "null";
            default -> "nothing";
        };
    }
}
