/**
 * The sample episode's other half: {@code SampleFilm} makes its footage from drawn pictures and a babbled voice, and
 * {@code expected.yaml} beside it says what the sample was written to show.
 */
@NullMarked
package org.misecue.sample;

import org.jspecify.annotations.NullMarked;
