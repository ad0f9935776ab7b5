package throwline.report.html;

import throwline.report.CompareAnswer;
import throwline.report.Page;

/**
 * One model of a comparison with what a page needs besides the answer.
 *
 * @param answer what was found
 * @param page units and looks
 * @param fileName name of the model file
 * @param fileText what is in it
 */
public record Compared(CompareAnswer answer, Page page, String fileName, String fileText) {}
