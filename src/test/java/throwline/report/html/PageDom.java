package throwline.report.html;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import throwline.report.CompareAnswer;
import throwline.report.answer.Answers;

/** A page as a tree: pages are written so that they are well-formed XML too. */
public record PageDom(String text, Element root) {

    public static PageDom of(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
            return new PageDom(html, document.getDocumentElement());
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The page of these answers, with a model file of this text. */
    public static PageDom of(String file, CompareAnswer... answers) {
        return of(Answers.html(Answers.compare(file, answers)));
    }

    /** Elements of a name, in order. */
    public static List<Element> all(Element from, String tag) {
        NodeList found = from.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    public List<Element> all(String tag) {
        return all(root, tag);
    }

    /** Elements of a class, in order. */
    public static List<Element> ofClass(Element from, String name) {
        return all(from, "*").stream()
                .filter(element ->
                        List.of(element.getAttribute("class").split(" ")).contains(name))
                .toList();
    }

    /** The card of a row. */
    Element card(String title) {
        return cards(title).stream().findFirst().orElseThrow(() -> new AssertionError("no card " + title));
    }

    /** The cards of this title, one a pack that is shown in full. */
    List<Element> cards(String title) {
        return ofClass(root, "card").stream()
                .filter(card -> said(all(card, "h3").get(0)).equals(title))
                .toList();
    }

    /** Text with plain blanks. */
    public static String said(Element element) {
        return element.getTextContent().replace('\u00a0', ' ').strip().replaceAll("\\s+", " ");
    }
}
