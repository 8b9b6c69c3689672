package org.heatfloor.examples;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;

/**
 * One JSON object of a room file while it is read. Every reading method records a fault and returns empty when the value
 * is missing or wrong; {@link #build} makes the result only when nothing was, and tells of keys nobody asked for.
 */
final class Section {

    private static final int MOST_CHARACTERS = 64;
    private static final int LONGEST_NAME = 120;
    private static final Pattern STUDS = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?) studs?");

    private final String path;
    private final ObjectNode node;
    private final Faults faults;
    private final int faultsBefore;
    private final Set<String> asked = new HashSet<>();

    Section(String path, ObjectNode node, Faults faults) {
        this.path = path;
        this.node = node;
        this.faults = faults;
        this.faultsBefore = faults.count();
    }

    String key(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    void fault(String name, String read, String expected) {
        faults.add(key(name), read, expected);
    }

    boolean has(String name) {
        return node.has(name);
    }

    /** Marks a key as known that is left out. */
    <T> Optional<T> absent(String name) {
        asked.add(name);
        return Optional.empty();
    }

    /** The raw value of a key that may be left out. */
    Optional<JsonNode> peek(String name) {
        asked.add(name);
        return Optional.ofNullable(node.get(name));
    }

    /** The result, when neither this object nor anything in it had a fault and the library takes it. */
    <T> Optional<T> build(Supplier<T> maker) {
        node.fieldNames().forEachRemaining(name -> {
            if (!asked.contains(name)) {
                fault(shown(name), "an unknown key", "one of " + String.join(", ", sorted(asked)));
            }
        });
        if (faults.count() > faultsBefore) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            // The library refused what the bounds here let pass; its message says what was given and what is expected.
            faults.add(new Fault(path.isEmpty() ? "file" : path, String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    /** A name: not blank, in one line. */
    Optional<String> name(String name) {
        Optional<String> text = text(name, "a name");
        if (text.isPresent()
                && (text.get().isBlank()
                        || text.get().length() > LONGEST_NAME
                        || !Fault.printable(text.get()).equals(text.get()))) {
            fault(name, Fault.quoted(text.get()), "a name of 1 to " + LONGEST_NAME + " printable characters");
            return Optional.empty();
        }
        return text;
    }

    /** One word out of a closed list. */
    <T> Optional<T> choice(String name, Map<String, T> words) {
        String expected = "one of " + String.join(", ", sorted(words.keySet()));
        Optional<String> text = text(name, expected);
        if (text.isPresent() && !words.containsKey(text.get())) {
            fault(name, Fault.quoted(text.get()), expected);
        }
        return text.map(words::get);
    }

    <T> Optional<T> choiceIfGiven(String name, Map<String, T> words) {
        return ifGiven(name, n -> choice(n, words));
    }

    Optional<String> text(String name, String expected) {
        Optional<JsonNode> value = value(name, expected);
        if (value.isPresent() && !value.get().isTextual()) {
            fault(name, JsonText.kind(value.get()), expected + " as a string");
            return Optional.empty();
        }
        return value.map(JsonNode::textValue);
    }

    <Q extends Quantity<Q>> Optional<Quantity<Q>> quantity(String name, Bounds<Q> bounds) {
        Optional<String> text = text(name, bounds.toString());
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            if (text.get().length() > MOST_CHARACTERS) {
                fault(name, Fault.quoted(text.get()), bounds.toString());
                return Optional.empty();
            }
            Quantity<Q> quantity = QuantityText.read(text.get(), bounds.unit());
            if (bounds.allow(quantity)) {
                return Optional.of(quantity);
            }
            fault(name, Fault.quoted(text.get()), bounds.toString());
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(key(name), String.valueOf(e.getMessage())));
        }
        return Optional.empty();
    }

    <Q extends Quantity<Q>> Optional<Quantity<Q>> quantityIfGiven(String name, Bounds<Q> bounds) {
        return ifGiven(name, n -> quantity(n, bounds));
    }

    /** A length, or a count of studs, from nothing to the given millimetres or studs. */
    Optional<TradeLength> tradeLength(String name, double mostMillimetres, double mostStuds) {
        String expected = "0 mm to " + QuantityText.number(mostMillimetres, 0) + " mm, or 0 studs to "
                + QuantityText.number(mostStuds, 0) + " studs,";
        Optional<String> text = text(name, expected);
        Matcher studs = STUDS.matcher(text.orElse(""));
        if (!studs.matches()) {
            return text.isEmpty()
                    ? Optional.empty()
                    : quantity(name, Bounds.of(Units.MILLIMETRE, 0, mostMillimetres))
                            .map(TradeLength::of);
        }
        double count = Double.parseDouble(studs.group(1));
        if (!(count <= mostStuds)) {
            fault(name, Fault.quoted(text.orElseThrow()), expected);
            return Optional.empty();
        }
        return Optional.of(TradeLength.studs(count));
    }

    /** A JSON number. */
    OptionalDouble number(String name, double least, double most) {
        String expected = "a number from " + QuantityText.number(least, 3) + " to " + QuantityText.number(most, 3);
        Optional<JsonNode> value = value(name, expected);
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        double number = value.get().isNumber() ? value.get().doubleValue() : Double.NaN;
        if (!(number >= least && number <= most)) {
            fault(name, JsonText.kind(value.get()), expected);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number);
    }

    Optional<Integer> integer(String name, int least, int most, String expected) {
        Optional<JsonNode> value = value(name, expected);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        JsonNode number = value.get();
        if (!number.isIntegralNumber()
                || !number.canConvertToInt()
                || number.intValue() < least
                || number.intValue() > most) {
            fault(name, JsonText.kind(number), expected);
            return Optional.empty();
        }
        return Optional.of(number.intValue());
    }

    /** True or false; the given value when left out. */
    boolean flag(String name, boolean whenLeftOut) {
        asked.add(name);
        JsonNode value = node.get(name);
        if (value == null) {
            return whenLeftOut;
        }
        if (!value.isBoolean()) {
            fault(name, JsonText.kind(value), "true or false");
        }
        return value.asBoolean(whenLeftOut);
    }

    /** A shape in metres. */
    Optional<Geometry> shape(String name, LengthUnit unit, Set<ShapeText.Kind> kinds) {
        Optional<String> text = text(name, ShapeText.expected(kinds));
        return text.flatMap(t -> ShapeText.read(key(name), t, unit, kinds, faults));
    }

    Optional<Section> section(String name) {
        Optional<JsonNode> value = value(name, "an object");
        if (value.isPresent() && !value.get().isObject()) {
            fault(name, JsonText.kind(value.get()), "an object");
            return Optional.empty();
        }
        return value.map(v -> new Section(key(name), (ObjectNode) v, faults));
    }

    <T> Optional<T> sectionIfGiven(String name, Function<Section, Optional<T>> reader) {
        return ifGiven(name, n -> section(n).flatMap(reader));
    }

    /** A list of objects; empty when the list itself is missing or wrong. */
    List<Section> sections(String name, int least, int most) {
        String expected = "a list of " + least + " to " + most + " objects";
        Optional<JsonNode> value = value(name, expected);
        if (value.isEmpty()) {
            return List.of();
        }
        JsonNode list = value.get();
        if (!list.isArray()) {
            fault(name, JsonText.kind(list), expected);
            return List.of();
        }
        if (list.size() < least || list.size() > most) {
            fault(name, list.isEmpty() ? "an empty list" : "a list of " + list.size(), expected);
            return List.of();
        }
        List<Section> sections = new ArrayList<>();
        Iterator<JsonNode> each = list.elements();
        for (int i = 0; each.hasNext(); i++) {
            JsonNode entry = each.next();
            if (entry instanceof ObjectNode object) {
                sections.add(new Section(key(name) + "[" + i + "]", object, faults));
            } else {
                fault(name + "[" + i + "]", JsonText.kind(entry), "an object");
            }
        }
        return sections;
    }

    List<Section> sectionsIfGiven(String name, int least, int most) {
        asked.add(name);
        return has(name) ? sections(name, least, most) : List.of();
    }

    private <T> Optional<T> ifGiven(String name, Function<String, Optional<T>> reader) {
        asked.add(name);
        return has(name) ? reader.apply(name) : Optional.empty();
    }

    private Optional<JsonNode> value(String name, String expected) {
        asked.add(name);
        JsonNode value = node.get(name);
        if (value == null) {
            fault(name, "nothing (the key is missing)", expected);
        }
        return Optional.ofNullable(value);
    }

    private static List<String> sorted(Set<String> words) {
        return words.stream().sorted().toList();
    }

    private static String shown(String name) {
        return name.length() <= 60 ? name : name.substring(0, 57) + "...";
    }
}
