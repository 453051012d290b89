/**
 * Films, stills and clips. A film is named as in {@code footage/}; moments are seconds on its clock, with decimals. Whoever
 * draws a player asks for the film's state, plays its {@code src}, and asks for a proxy where there is none:
 *
 * <pre>
 * GET    /e/{episode}/media                  {"films": [STATE, …]}
 * GET    /e/{episode}/media/{film}           the camera's own file, or ranges of it
 * GET    /e/{episode}/media/{film}/state     STATE
 * POST   /e/{episode}/media/{film}/proxy     begins a smaller copy that browsers play; 202 with STATE
 * DELETE /e/{episode}/media/{film}/proxy     stops making it; STATE
 * GET    /e/{episode}/media/{film}/proxy     the copy, or ranges of it; 404 while there is none
 * POST   /e/{episode}/media/{film}/still     at=12.48; 201 with MADE
 * POST   /e/{episode}/media/{film}/clip      from=12.48&amp;to=15; 201 with MADE
 * GET    /e/{episode}/made/stills/{file}     what was made before
 * GET    /e/{episode}/made/clips/{file}
 *
 * STATE  {"film": "main.mov",          its name
 *         "src": "/e/…/proxy",         what a player plays: the copy where there is one; null where nothing can be played
 *         "why": "…",                  why browsers do not play the camera's own file; empty where they do
 *         "making": 40,                percent of the copy that is made; null while none is being made
 *         "wrong": "…",                why the film cannot be used or the last copy came to nothing; else empty
 *         "seconds": 72.36,            how long the film is
 *         "picture": {"width": 1920, "height": 1080, "rate": "30000/1001"}}     null for a sound recording
 * MADE   {"src": "/e/…/made/stills/main-0.00.12.480.png", "file": "out/stills/main-0.00.12.480.png"}
 * </pre>
 *
 * A copy has the clock of its film: a moment is the same in both. A player that shall show the frame of a moment had better
 * go a thousandth of a second beyond the frame's beginning, because browsers count in binary fractions.
 */
@NullMarked
package org.misecue.desk.media;

import org.jspecify.annotations.NullMarked;
