/**
 * The filming day while it goes on. {@link org.misecue.desk.day.DayStation} has the addresses;
 * {@link org.misecue.desk.day.FilmDay} plans while nobody waits for it and shows what was kept;
 * {@link org.misecue.desk.day.DayBoard} is what a page shows at a time. What is done is kept in {@code .misecue/done.yaml},
 * the plan in {@code .misecue/day.json}, where the command {@code misecue day} keeps it too.
 */
@NullMarked
package org.misecue.desk.day;

import org.jspecify.annotations.NullMarked;
