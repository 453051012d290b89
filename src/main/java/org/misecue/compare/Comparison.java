package org.misecue.compare;

import java.util.List;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Everything written, held against everything said.
 *
 * @param title the recipe's
 * @param factor how many written batches the speaker says are being made; 1 where nothing is announced
 * @param written one verdict per ingredient line with a quantity, in recipe order
 * @param settings one per written setting
 * @param unwritten what was added without being written
 * @param unplaced amounts on screen that fit nothing written: somebody has to look what they are for
 */
public record Comparison(
        String title,
        RationalNumber factor,
        List<LineVerdict> written,
        List<SettingVerdict> settings,
        List<Unwritten> unwritten,
        List<Evidence> unplaced) {

    /** Where nobody has spoken yet. */
    public static Comparison silent(String title) {
        return new Comparison(title, Rationals.ONE, List.of(), List.of(), List.of());
    }

    /** Of what was said alone. */
    public Comparison(
            String title,
            RationalNumber factor,
            List<LineVerdict> written,
            List<SettingVerdict> settings,
            List<Unwritten> unwritten) {
        this(title, factor, written, settings, unwritten, List.of());
    }

    Comparison withUnplaced(List<Evidence> amounts) {
        return new Comparison(title, factor, written, settings, unwritten, amounts);
    }
}
