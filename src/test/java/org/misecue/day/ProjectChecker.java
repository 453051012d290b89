package org.misecue.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Goes through a schedule minute by minute with pencil and paper, knowing nothing of how it was found. */
final class ProjectChecker {

    private final Project project;
    private final Schedule schedule;
    private final List<String> faults = new ArrayList<>();

    private ProjectChecker(Project project, Schedule schedule) {
        this.project = project;
        this.schedule = schedule;
    }

    /** What the schedule breaks, in words; nothing where it may be followed. */
    static List<String> faults(Project project, Schedule schedule) {
        ProjectChecker checker = new ProjectChecker(project, schedule);
        checker.lags();
        checker.minutes();
        checker.ovens();
        checker.camera();
        checker.clock();
        checker.end();
        return checker.faults;
    }

    private int start(int work) {
        return schedule.starts().get(work);
    }

    private int end(int work) {
        return start(work) + project.works().get(work).minutes();
    }

    private void fault(String words, Object... values) {
        faults.add(words.formatted(values));
    }

    private void lags() {
        for (Lag lag : project.lags()) {
            int between = start(lag.after()) - end(lag.before());
            if (between < lag.least()) {
                fault("%s is broken: only %d min", lag, between);
            }
            if (lag.most().isPresent() && between > lag.most().getAsInt()) {
                fault("%s is broken: %d min", lag, between);
            }
        }
    }

    private void minutes() {
        int last = project.works().isEmpty() ? 0 : schedule.end();
        for (int minute = 0; minute < last; minute++) {
            Map<String, Integer> busy = new HashMap<>();
            for (int work = 0; work < project.works().size(); work++) {
                if (start(work) <= minute && minute < end(work)) {
                    project.works().get(work).takes().forEach((means, taken) -> busy.merge(means, taken, Integer::sum));
                }
            }
            int now = minute;
            project.limits().forEach(limit -> {
                if (limit instanceof Limit.Away away && away.from() <= now && now < away.to()) {
                    busy.merge(away.means(), 1, Integer::sum);
                }
            });
            project.means().forEach((means, number) -> {
                if (busy.getOrDefault(means, 0) > number) {
                    fault("minute %d takes %d of %s", now, busy.get(means), means);
                }
            });
        }
    }

    private void ovens() {
        for (int minute = 0; minute < schedule.end(); minute++) {
            for (int oven = 0; oven < project.ovens(); oven++) {
                Set<Integer> heats = new HashSet<>();
                int bakes = 0;
                for (int work : bakes()) {
                    if (schedule.ovens().get(work) == oven && start(work) <= minute && minute < end(work)) {
                        bakes++;
                        heats.add(heat(work).celsius());
                    }
                }
                if (bakes > project.shelves() || heats.size() > 1) {
                    fault("oven %d holds %d bakes of %s at minute %d", oven, bakes, heats, minute);
                }
            }
        }
        for (int one : bakes()) {
            for (int other : bakes()) {
                boolean follows = one != other
                        && !goesOn(one, other)
                        && schedule.ovens().get(one).equals(schedule.ovens().get(other))
                        && start(other) >= end(one)
                        && heat(one).celsius() != heat(other).celsius();
                if (follows && start(other) - end(one) < heat(other).heating()) {
                    fault("oven has no time to go from work %d to %d", one, other);
                }
            }
        }
    }

    private boolean goesOn(int one, int other) {
        return project.limits().contains(new Limit.GoesOn(one, other));
    }

    private Set<Integer> bakes() {
        Set<Integer> bakes = new TreeSet<>();
        for (int work = 0; work < project.works().size(); work++) {
            int oven = schedule.ovens().get(work);
            if (project.works().get(work).heat().isPresent()) {
                bakes.add(work);
                if (oven < 0 || oven >= project.ovens()) {
                    fault("work %d bakes in oven %d", work, oven);
                }
            } else if (oven >= 0) {
                fault("work %d is in an oven and bakes nothing", work);
            }
        }
        return bakes;
    }

    private Work.Heat heat(int work) {
        return project.works().get(work).heat().orElseThrow();
    }

    /** One camera needs its time between two set-ups. */
    private void camera() {
        if (project.means().getOrDefault(Project.CAMERA, 1) != 1) {
            return;
        }
        for (int one = 0; one < project.works().size(); one++) {
            for (int other = 0; other < project.works().size(); other++) {
                boolean moves = project.works().get(one).setUp().isPresent()
                        && project.works().get(other).setUp().isPresent()
                        && !project.works()
                                .get(one)
                                .setUp()
                                .equals(project.works().get(other).setUp());
                if (one != other && moves && start(one) <= start(other) && start(other) < end(one) + project.change()) {
                    fault("the camera cannot go from work %d to %d", one, other);
                }
            }
        }
    }

    private void clock() {
        int pauses = 0;
        for (Limit limit : project.limits()) {
            if (limit instanceof Limit.Window window) {
                window.works().stream()
                        .filter(work -> start(work) < window.from() || end(work) > window.to())
                        .forEach(work -> fault("work %d is outside %s", work, window));
            } else if (limit instanceof Limit.At at && start(at.work()) != at.minute()) {
                fault("%s begins at %d", at, start(at.work()));
            } else if (limit instanceof Limit.DayEnd dayEnd && schedule.end() > dayEnd.minute()) {
                fault("%s is broken: %d", dayEnd, schedule.end());
            } else if (limit instanceof Limit.SameOven same) {
                dial(same);
            } else if (limit instanceof Limit.Pause pause) {
                pause(pause, schedule.pauses().get(pauses++));
            }
        }
    }

    /** From the dial to the end of its bake the oven has no other heat. */
    private void dial(Limit.SameOven same) {
        int oven = schedule.ovens().get(same.bake());
        if (schedule.ovens().get(same.dial()) != oven) {
            fault("the dial of work %d is not that of its oven", same.bake());
        }
        bakes().stream()
                .filter(work -> schedule.ovens().get(work) == oven)
                .filter(work -> heat(work).celsius() != heat(same.bake()).celsius())
                .filter(work -> start(work) < end(same.bake()) && end(work) > start(same.dial()))
                .forEach(work -> fault("work %d changes the heat between the dial and its bake %d", work, same.bake()));
    }

    private void pause(Limit.Pause pause, int begin) {
        if (begin < 0) {
            if (schedule.end() > pause.latest()) {
                fault("%s is not held", pause);
            }
            return;
        }
        if (begin < pause.earliest() || begin > pause.latest()) {
            fault("%s begins at %d", pause, begin);
        }
        for (int work = 0; work < project.works().size(); work++) {
            boolean hands = project.works().get(work).takes().containsKey(Project.PRESENTER)
                    || project.works().get(work).takes().containsKey(Project.CAMERA);
            if (hands && start(work) < begin + pause.minutes() && end(work) > begin) {
                fault("work %d goes on in %s", work, pause);
            }
        }
    }

    private void end() {
        int last = 0;
        for (int work = 0; work < project.works().size(); work++) {
            if (start(work) < 0) {
                fault("work %d begins at %d", work, start(work));
            }
            last = Math.max(last, end(work));
        }
        if (last != schedule.end()) {
            fault("the end is said to be %d and is %d", schedule.end(), last);
        }
    }
}
