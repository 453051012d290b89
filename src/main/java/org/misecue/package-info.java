/**
 * misecue keeps a filmed bake and its written recipe in step. Each package is one part of the job and leans only on
 * those before it: {@code notice}, {@code quantity}, {@code pantry}, {@code recipe}, {@code scale}; then {@code prep}
 * and {@code shots} for the presenter; {@code narration}, {@code footage} and {@code search} for the editor; {@code
 * spoken}, {@code align} and {@code compare} for the producer; {@code publish}; {@code episode}; and {@code cli}, which
 * knows everybody and is known by nobody. {@code page} turns templates into HTML and PDF.
 */
@NullMarked
package org.misecue;

import org.jspecify.annotations.NullMarked;
