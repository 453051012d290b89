package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.align.Aligner;
import org.misecue.align.Alignment;
import org.misecue.claims.Claim;
import org.misecue.claims.Claims;
import org.misecue.claims.Written;
import org.misecue.compare.Comparer;
import org.misecue.compare.Comparison;
import org.misecue.compare.Findings;
import org.misecue.compare.Journey;
import org.misecue.compare.Picture;
import org.misecue.compare.Unwritten;
import org.misecue.decide.Docket;
import org.misecue.decide.DocketText;
import org.misecue.decide.Matter;
import org.misecue.episode.Correction;
import org.misecue.episode.Corrections;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;
import org.misecue.episode.EpisodeSettings;
import org.misecue.episode.FileKind;
import org.misecue.episode.Ticks;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;
import org.misecue.narration.Clock;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.offers.Offer;
import org.misecue.offers.Offers;
import org.misecue.pantry.Pantry;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.PrepPlanner;
import org.misecue.prep.PrepSettings;
import org.misecue.publish.Describer;
import org.misecue.publish.Description;
import org.misecue.publish.Edition;
import org.misecue.publish.PublishTemplates;
import org.misecue.publish.RecipePage;
import org.misecue.publish.SchemaOrg;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.Scaler;
import org.misecue.scale.Spoons;
import org.misecue.shots.ShotPlan;
import org.misecue.shots.ShotPlanner;
import org.misecue.shots.ShotTemplates;

/** One episode with everything that is worked out from it, each thing once and only when it is asked for. */
public final class Worktop {

    private final Episode episode;
    private final OwnPantry own;
    private final Lazy<Pantry> pantry;
    private final Lazy<Pantry> kitchen =
            Lazy.of(() -> pantry().speaking(settings().language()));
    private final Lazy<Recipe> recipe = Lazy.of(this::readRecipe);
    private final Lazy<FilmClocks> clocks;
    private final Lazy<SaidInFilms> said = Lazy.of(this::readNarrations);
    private final Lazy<Alignment> alignment = Lazy.of(this::align);
    private final Lazy<Comparison> comparison = Lazy.of(this::compare);
    private final Lazy<Findings> findings =
            Lazy.of(() -> Findings.of(said(), claims(), recipe(), pantry()).withHeardOtherwise(heardOtherwise()));
    private final Lazy<List<Claim>> claims = Lazy.of(this::findClaims);
    private final Lazy<Picture> picture;
    private final Lazy<ScaledRecipe> scaled = Lazy.of(() -> scale(settings().batch()));
    private final Lazy<ScaledRecipe> published =
            Lazy.of(() -> scale(settings().publish().batch()));
    private final Lazy<PrepPlan> prep = Lazy.of(this::planPrep);
    private final Lazy<ShotPlan> shots = Lazy.of(this::planShots);
    private final Lazy<List<Offer>> offers = Lazy.of(() -> Offers.of(recipe(), narrations(), pantry()));
    private final Lazy<Edition> edition = Lazy.of(this::makeEdition);
    private final Lazy<Edition> timed = Lazy.of(this::timeEdition);
    private final Lazy<PublishTemplates> templates = Lazy.of(this::readTemplates);
    private final Lazy<Description> description =
            Lazy.of(() -> Describer.describe(edition(), Publishing.description(settings()), templates.get()));

    /** @param look reads what the films show */
    public Worktop(Episode episode, OwnPantry own, Supplier<Pantry> pantry, Function<Worktop, Picture> look) {
        this.episode = episode;
        this.own = own;
        this.pantry = Lazy.of(pantry);
        this.clocks = Lazy.of(() -> new FilmClocks(episode, settings().offsets()));
        this.picture = Lazy.of(() -> look.apply(this));
    }

    /** Of the episode, or else of the dish. */
    public String title() {
        return settings().title().orElse(recipe().title());
    }

    public Episode episode() {
        return episode;
    }

    public EpisodeSettings settings() {
        return episode.settings();
    }

    /** With the person's own rows. */
    public Pantry pantry() {
        return pantry.get();
    }

    public OwnPantry ownPantry() {
        return own;
    }

    /** The same where things are weighed: with the eggs of the episode's country. */
    public Pantry kitchen() {
        return kitchen.get();
    }

    public Recipe recipe() {
        return recipe.get();
    }

    /** The batch that is baked on camera. */
    public ScaledRecipe scaled() {
        return scaled.get();
    }

    /** The batch that viewers get. */
    public ScaledRecipe published() {
        return published.get();
    }

    public PrepPlan prep() {
        return prep.get();
    }

    public ShotPlan shots() {
        return shots.get();
    }

    /** Empty where nobody has spoken yet. */
    public List<Narration> narrations() {
        return said.get().all();
    }

    /** What was left out or mended in what is said, and where it is from. */
    public List<Note> narrationNotes() {
        return said.get().notes();
    }

    public Alignment alignment() {
        return alignment.get();
    }

    /** @throws BadInput if there is no narration to compare with */
    public Comparison comparison() {
        return comparison.get();
    }

    /**
     * How the verdicts came about on what the words mean.
     *
     * @throws BadInput if there is no narration, or the words mean nothing of the recipe
     */
    public List<Journey> journeys(String words) {
        comparison(); // tells what is missing
        return Comparer.explain(
                recipe(),
                narrations(),
                picture(),
                pantry(),
                settings().kitchen().spoons(),
                words);
    }

    /** What is claimed of the dish. */
    public List<Claim> claims() {
        return claims.get();
    }

    private List<Claim> findClaims() {
        List<String> added =
                said().unwritten().stream().map(Unwritten::ingredient).toList();
        return Claims.of(recipe(), narrations(), picture().cards(), ownTexts(), added, pantry());
    }

    /** Whether there is anything to hold the recipe against. */
    public boolean filmed() {
        return !narrations().isEmpty() || !picture().cards().isEmpty();
    }

    /** What was said alone held against the recipe, without what the films show; nothing where nobody has spoken yet. */
    Comparison heard() {
        return narrations().isEmpty()
                ? Comparison.silent(recipe().title())
                : Comparer.compare(
                        recipe(), narrations(), pantry(), settings().kitchen().spoons());
    }

    /** The comparison, or one that finds nothing where there is no film yet. */
    private Comparison said() {
        return filmed() ? comparison() : Comparison.silent(recipe().title());
    }

    /** What the producer writes beside the recipe. */
    private List<Written> ownTexts() {
        return Stream.concat(settings().title().stream(), settings().publish().web().summary().stream())
                .map(text -> new Written(Place.of("episode.yaml"), text))
                .toList();
    }

    /** What the films show in writing. */
    public Picture picture() {
        return picture.get();
    }

    /** What is to be decided, with what was decided until now: decisions are read again whenever somebody asks. */
    public Docket docket() {
        return Docket.of(findings(), new Decisions(episode).read());
    }

    /** What was decided and still holds, in words, by what it is about. */
    public Map<String, String> decisions() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Matter matter : docket().matters()) {
            if (!matter.state().isOpen()) {
                matter.decision().ifPresent(one -> words.put(matter.about(), DocketText.words(one)));
            }
        }
        return words;
    }

    /** The comparison as the producer works through it. */
    public Findings findings() {
        return findings.get();
    }

    /** What viewers get, before it has a form. */
    public Edition edition() {
        return edition.get();
    }

    /** Those of the program under the person's own: first those at home, then those of the episode. */
    private PublishTemplates readTemplates() {
        return PublishTemplates.withOwn(own.folders("publish-templates"));
    }

    public Description description() {
        return description.get();
    }

    /** The published recipe as a page, with its data for machines. */
    public String recipePage() {
        return RecipePage.html(draft(), Publishing.description(settings()), templates.get());
    }

    /** The print of that page. */
    public byte[] recipePrint() {
        return RecipePage.pdf(draft(), Publishing.description(settings()), templates.get());
    }

    /** The published recipe for machines; a draft says that it is one. */
    public String recipeData() {
        return SchemaOrg.json(draft());
    }

    /** With what still keeps it from going out. */
    private Edition draft() {
        Release release = new Release(this);
        return timed.get().asDraft(release.isBlocked() ? Optional.of(release.draftHead()) : Optional.empty());
    }

    /** With the length of its film, for which the film is opened. */
    private Edition timeEdition() {
        return edition().with(edition().web().withLength(Publishing.length(this)));
    }

    private Recipe readRecipe() {
        return RecipeReader.read(episode.recipe(), episode.name(episode.recipe()), pantry());
    }

    private SaidInFilms readNarrations() {
        return SaidInFilms.read(
                clocks.get(), new Corrections(episode).read(), settings().language());
    }

    /** What somebody heard otherwise than the recogniser wrote it, in words; those that are put in. */
    public List<String> heardOtherwise() {
        return new Corrections(episode)
                .read().stream()
                        .filter(this::isPutIn)
                        .map(this::onFilm)
                        .map(Correction::sentence)
                        .toList();
    }

    /** Whether the words that it corrects are still there. */
    public boolean isPutIn(Correction correction) {
        return narrations().stream()
                .filter(one -> one.source().equals(correction.narration()))
                .anyMatch(one -> one.mended().contains(correction.mend()));
    }

    /** The same with its time on the film's clock. */
    public Correction onFilm(Correction correction) {
        return correction.moved(clocks.get().offsetOf(correction.narration()));
    }

    /** What is kept of one, on the clock of the narration's file. */
    Correction onFile(Correction correction) {
        return correction.moved(clocks.get().offsetOf(correction.narration()).negated());
    }

    private Alignment align() {
        return Aligner.align(recipe(), narrations(), pantry());
    }

    private Comparison compare() {
        if (!filmed()) {
            throw new BadInput(
                    Place.of(episode.folder().resolve("narration").toString()),
                    "there is no narration to compare with; put a " + FileKind.NARRATIONS + " file there."
                            + said.get().unusable().stream()
                                    .map(note -> " (" + note + ")")
                                    .collect(Collectors.joining()));
        }
        return Comparer.compare(
                recipe(),
                narrations(),
                picture(),
                pantry(),
                settings().kitchen().spoons());
    }

    /** What this kitchen weighs and measures with. */
    public ScaleRules rules() {
        EpisodeSettings.Kitchen own = settings().kitchen();
        return new ScaleRules(
                own.scale(),
                own.spoons().orElseGet(() -> Spoons.of(recipe(), settings().language())),
                own.ovens(),
                own.mixer());
    }

    private ScaledRecipe scale(Batch batch) {
        return Scaler.scale(recipe(), batch, rules(), kitchen());
    }

    private PrepPlan planPrep() {
        return PrepPlanner.plan(
                        scaled(),
                        kitchen(),
                        new PrepSettings(
                                settings().sets(),
                                rules().household(),
                                rules().ovens(),
                                settings().firstShot(),
                                settings().kitchen().scale().amount().least().orElse(Rationals.ONE),
                                settings().standby().failures(),
                                settings().standby().hero(),
                                settings().standby().madeEarlier()))
                .withTicks(new Ticks(episode).read());
    }

    private ShotPlan planShots() {
        return ShotPlanner.plan(
                scaled(), prep(), ShotTemplates.withOwn(episode.folder().resolve("shot-templates")));
    }

    /** Substitutions that were offered on camera. */
    public List<Offer> offers() {
        return offers.get();
    }

    /** What a producer has to hear of them before they are published. */
    public List<Note> offerNotes() {
        return offers().stream()
                .map(offer -> new Note(Place.of(offer.moment().source()), words(offer)))
                .toList();
    }

    /** What was understood, and what the description makes of it. */
    public static String words(Offer offer) {
        return "at %s %s may take the place of %s; %s"
                .formatted(
                        Clock.hms(offer.moment().at()),
                        offer.use(),
                        offer.instead(),
                        offer.isNamed()
                                ? "the description says so as said in the film: listen whether that was meant"
                                : "what it takes the place of was guessed, so the description leaves it out");
    }

    /** How many characters the description may have. */
    public int mostCharacters() {
        return Publishing.description(settings()).limit();
    }

    private Edition makeEdition() {
        boolean spoken = !narrations().isEmpty();
        return new Edition(
                published(),
                spoken ? Optional.of(comparison()) : Optional.empty(),
                spoken ? Optional.of(alignment()) : Optional.empty(),
                offers().stream().filter(Offer::isNamed).toList(),
                kitchen(),
                narrationsOnFilm(),
                Publishing.web(this),
                Optional.empty());
    }

    /**
     * What each film holds.
     *
     * @throws BadInput if one cannot be read
     */
    public Map<Path, FilmInfo> films() {
        Map<Path, FilmInfo> films = new LinkedHashMap<>();
        episode.footage().forEach(film -> films.put(film, Footage.probe(film)));
        return films;
    }

    FilmClocks clocks() {
        return clocks.get();
    }

    /** The film on whose clock a narration runs: that of its offset, of the same name, or the only one there is. */
    public Optional<Path> filmOf(String narration) {
        return clocks.get().filmOf(narration);
    }

    /** What was added to a narration's own times to have those of its film. */
    public Duration offsetOf(String narration) {
        return clocks.get().offsetOf(narration);
    }

    /** What is wrong where {@link #filmOf} finds none. */
    public BadInput noFilm(String narration) {
        return new BadInput(
                Place.of(narration),
                "no film in footage/ has the name of this narration, so there is nothing to show; name them alike, or name its film in episode.yaml under narration: offsets.");
    }

    /** The narrations that run on a film's clock, in the order of its time. */
    public List<Narration> narrationsOf(Path film) {
        return said.get().of(film);
    }

    /** All narrations, those that share a clock together and in the order of its time. */
    public List<List<Narration>> narrationsByClock() {
        return said.get().byClock();
    }

    /** The narrations on the clock that viewers see; none where it is not sure which film that is. */
    List<String> narrationsOnFilm() {
        return said.get().onClockOf(settings().publish().film());
    }

    /** What pictures, clips and lists of a film are called, without folder and ending. */
    public String resultName(Path film) {
        ResultNames names =
                new ResultNames(episode.footage().stream().map(episode::name).toList());
        return names.of(episode.name(film));
    }

    /** A file's name without folder and ending. */
    public static String stem(String name) {
        String file = name.substring(name.lastIndexOf('/') + 1);
        int dot = file.lastIndexOf('.');
        return dot < 0 ? file : file.substring(0, dot);
    }
}
