package throwline.report.html;

import throwline.report.CompareAnswer;
import throwline.report.Page;
import throwline.section.AirfoilLibrary;

/**
 * One model of a comparison with what a page needs besides the answer.
 *
 * @param answer what was found
 * @param page units and looks
 * @param airfoils where its airfoils are found
 * @param fileName name of the model file
 * @param fileText what is in it
 */
public record Compared(CompareAnswer answer, Page page, AirfoilLibrary airfoils, String fileName, String fileText) {}
