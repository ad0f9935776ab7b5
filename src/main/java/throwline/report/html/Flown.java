package throwline.report.html;

import throwline.model.Model;
import throwline.report.Page;
import throwline.study.Comparison.PackResult;

/**
 * All set-ups of a model with one pack, as a page shows them side by side with others.
 *
 * @param who what tells it from the others; empty where there is one only
 * @param model the aeroplane
 * @param result its set-ups
 * @param air what is said of it
 * @param page units and looks
 */
record Flown(String who, Model model, PackResult result, String air, Page page) {}
