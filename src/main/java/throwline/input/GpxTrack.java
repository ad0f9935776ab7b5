package throwline.input;

import java.io.StringReader;
import java.util.OptionalDouble;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import throwline.logs.Channel;
import throwline.words.Message;

/**
 * Reads track points of GPX 1.1 (the schema of topografix.com, elements MEMORY): latitude, longitude, height, time. Document
 * types and external entities are off.
 */
final class GpxTrack {

    private final LogRows rows;
    private final Problems problems;
    private double latitude = Double.NaN;
    private double longitude = Double.NaN;
    private double height = Double.NaN;
    private OptionalDouble time = OptionalDouble.empty();

    GpxTrack(LogRows rows, Problems problems) {
        this.rows = rows;
        this.problems = problems;
    }

    void read(String text) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(text));
            while (xml.hasNext() && !problems.isFull()) {
                step(xml, xml.next());
            }
        } catch (XMLStreamException e) {
            int line = Math.max(1, e.getLocation() == null ? 1 : e.getLocation().getLineNumber());
            int column =
                    Math.max(1, e.getLocation() == null ? 1 : e.getLocation().getColumnNumber());
            problems.add(new FilePlace(line, column), "", Message.of("input.log.xml"));
        }
    }

    private void step(XMLStreamReader xml, int event) throws XMLStreamException {
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw new XMLStreamException("document type", xml.getLocation());
        }
        if (event == XMLStreamConstants.START_ELEMENT) {
            switch (xml.getLocalName()) {
                case "trkpt" -> {
                    latitude = number(xml.getAttributeValue(null, "lat"));
                    longitude = number(xml.getAttributeValue(null, "lon"));
                    height = Double.NaN;
                    time = OptionalDouble.empty();
                }
                case "ele" -> height = number(xml.getElementText());
                case "time" -> time = LogClock.read(xml.getElementText().strip());
                default -> {}
            }
        } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("trkpt")) {
            point(xml.getLocation().getLineNumber());
        }
    }

    private void point(int line) {
        if (time.isEmpty() || Double.isNaN(latitude) || Double.isNaN(longitude)) {
            rows.drop();
        } else if (rows.begin(time.getAsDouble(), line)) {
            rows.put(Channel.LATITUDE, Math.toRadians(latitude));
            rows.put(Channel.LONGITUDE, Math.toRadians(longitude));
            rows.put(Channel.HEIGHT, height);
        }
    }

    private static double number(@org.jspecify.annotations.Nullable String text) {
        return text != null && text.strip().matches("[+-]?\\d+(\\.\\d+)?")
                ? Double.parseDouble(text.strip())
                : Double.NaN;
    }
}
