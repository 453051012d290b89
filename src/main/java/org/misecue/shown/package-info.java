/**
 * Text in the picture: what a viewer reads and when. The ways in: {@link org.misecue.shown.LanguageData#find} says
 * whether anything can be read on this machine, {@link org.misecue.shown.Cards#read} reads a film, and
 * {@link org.misecue.shown.ShownJson} keeps a reading. A {@link org.misecue.shown.Card} is one text with its first and
 * last moment.
 *
 * <p>The journey of a card: {@code CardWatch} sees a few small pictures of each second; {@code StandingEdges} knows which
 * edges stay where they are, {@code WritingFinder} which of them look like writing. A {@code Patch} follows such a part by
 * its {@code Trace} and has it read once, from several pictures together. {@code TextEye} finds its lines;
 * {@code LineReader} has each read by {@code LineLooker} in several {@code Preparation}s and believes figures only where
 * the readings agree; {@code FractionReader} reads signs such as ½, which the language data does not know;
 * {@code Figures} doubts what may have been something else. {@code CardMerger} makes cards of all readings.
 *
 * <p>A wrong amount must never be taken for a right one: a line is rather marked doubtful once too often. Tesseract is
 * loaded by the first reading, never without language data.
 */
@NullMarked
package org.misecue.shown;

import org.jspecify.annotations.NullMarked;
