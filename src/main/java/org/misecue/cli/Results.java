package org.misecue.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.compare.CompareJson;
import org.misecue.compare.ComparePage;
import org.misecue.day.DayPage;
import org.misecue.day.DayPlan;
import org.misecue.day.DayText;
import org.misecue.decide.Docket;
import org.misecue.decide.FixList;
import org.misecue.decide.PickupList;
import org.misecue.episode.OutFolder;
import org.misecue.footage.FilmInfo;
import org.misecue.page.Pdf;
import org.misecue.prep.ChecklistPage;
import org.misecue.prep.LabelPage;
import org.misecue.prep.LabelSheet;
import org.misecue.prep.PrepPage;
import org.misecue.prep.PrepText;
import org.misecue.shots.CueCards;
import org.misecue.shots.ShotOrder;
import org.misecue.shots.ShotsCsv;
import org.misecue.shots.ShotsPage;
import org.misecue.shots.ShotsText;
import org.misecue.worktop.DecidingMoments;
import org.misecue.worktop.PublishedFiles;
import org.misecue.worktop.Worktop;

/** What {@code make} makes: first worked out, then written. */
final class Results {

    private final Worktop worktop;
    private final OutFolder out;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final List<String> table = new ArrayList<>();

    Results(Worktop worktop) {
        this.worktop = worktop;
        this.out = worktop.episode().out();
    }

    void addPrep() {
        String sheet = PrepPage.html(worktop.prep());
        add("prep.html", sheet);
        files.put("prep.pdf", Pdf.of(sheet));
        add("prep.txt", PrepText.of(worktop.prep()));
        files.put("labels.pdf", Pdf.of(LabelPage.html(worktop.prep())));
        row("bowls, jobs, shopping", "prep.html, prep.pdf, prep.txt");
        files.put("checklist.pdf", Pdf.of(ChecklistPage.html(worktop.prep(), LabelSheet.Paper.A4)));
        row("labels for the bowls", "labels.pdf");
        row("boxes to tick", "checklist.pdf");
    }

    void addShots() {
        String list = ShotsPage.html(worktop.shots(), ShotOrder.STORY);
        add("shots.html", list);
        files.put("shots.pdf", Pdf.of(list));
        files.put("cue-cards.pdf", Pdf.of(CueCards.html(worktop.shots(), ShotOrder.STORY)));
        add("shots.csv", ShotsCsv.of(worktop.shots(), ShotOrder.STORY));
        add("shots.txt", ShotsText.of(worktop.shots(), ShotOrder.STORY));
        row("shot list", "shots.html, shots.pdf, shots.csv, shots.txt");
        row("what to say, large", "cue-cards.pdf");
    }

    void addDay(DayPlan plan) {
        String page = DayPage.html(plan, Optional.empty());
        add("day.html", page);
        files.put("day.pdf", Pdf.of(page));
        add("day.txt", DayText.of(plan));
        row("the filming day", "day.html, day.pdf, day.txt");
    }

    void addComparison() {
        add("compare.json", CompareJson.of(worktop.comparison(), worktop.claims(), worktop.heardOtherwise()));
        row("written against said", "compare.html, compare.json");
    }

    /** Nothing where nothing was decided that is still to be done. */
    void addLists() {
        Docket docket = worktop.docket();
        if (!docket.toDo().isEmpty()) {
            add("pickups.txt", PickupList.of(docket));
            add("fixes.txt", FixList.of(docket));
            row("to film again, to cut", "pickups.txt, fixes.txt");
        }
    }

    void addDescription() {
        PublishedFiles published = new PublishedFiles(worktop);
        PublishedFiles.NAMES.forEach(name -> files.put(name, published.bytes(name)));
        row("for the film's page", "description.txt, recipe.html, recipe.pdf, recipe.jsonld");
    }

    private void add(String name, String text) {
        files.put(name, text.getBytes(UTF_8));
    }

    private void row(String what, String names) {
        table.add("%-22s  %s".formatted(what, out.path(names)));
    }

    void write() {
        files.forEach(out::write);
    }

    /** The page with the pictures of the moments to decide about; these are taken now. */
    void writeComparePage(Map<Path, FilmInfo> films) {
        DecidingMoments moments = DecidingMoments.make(worktop, films);
        out.write(
                "compare.html",
                ComparePage.html(worktop.findings(), moments.stills(), moments.clips(), worktop.decisions()));
        if (!moments.stills().isEmpty()) {
            row("moments to decide on", "stills, clips (" + moments.stills().size() + " each)");
        }
    }

    /** What was made and where it lies, a line for each kind. */
    List<String> table() {
        return List.copyOf(table);
    }
}
