package org.misecue.desk.begin;

import io.javalin.Javalin;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;

/** Everything by which episodes begin and grow. */
public final class Begin implements Station {

    @Override
    public void open(Javalin server, Counter counter) {
        Room room = Room.ON_DISK;
        Intake intake = new Intake(room);
        new NewEpisodes(intake, room).open(server, counter);
        new EpisodeFiles(intake, room).open(server, counter);
        new FirstLook().open(server, counter);
    }
}
