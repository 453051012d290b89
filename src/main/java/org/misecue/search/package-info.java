/**
 * The index over what was said, the steps, the shots and the ingredients. {@link org.misecue.search.MomentIndex} is the way in for one
 * episode and {@link org.misecue.search.ArchiveIndex} for an archive of them: each makes an index of {@link
 * org.misecue.search.Passage}s and gives a {@link org.misecue.search.FindResult}, which {@link org.misecue.search.FindText}
 * and {@link org.misecue.search.FindJson} write out.
 *
 * <p>The journey of a query: {@code Ask} and {@code Narrowing} read it, {@code Plan} adds other names and spellings ({@code Wanted}), {@code
 * Beginnings} has what an unfinished word may become, {@code Queries} asks Lucene for passages, {@code Scope} puts the
 * answers in order and {@code ByKind} keeps the kinds apart, {@code Nearby} finds what is said in several passages, {@code Spotter} finds the words in each and so the
 * moment, {@code Folding} makes one of near repeats.
 * {@code Vocabulary} tells which words of the index are forms of a word, or sound like it: only plain words are indexed.
 * The journey of a passage: {@code Window} makes one of those that follow closely and looks over the cue's border, {@code
 * AmountKeys} gives each amount its value, {@code Terms}, {@code TermStream}, {@code WindowDocument} and {@code WindowBytes}
 * say how Lucene keeps it.
 */
@NullMarked
package org.misecue.search;

import org.jspecify.annotations.NullMarked;
