namespace Sightglass.Cli.Verbs;

/// <summary>The verbs, in the order of the help.</summary>
internal static class AllVerbs
{
    public static IEnumerable<Verb> Create() =>
    [
        new StartVerb(), new CheckVerb(), new WalkVerb(), new RouteVerb(), new LessonVerb(), new BetVerb(), new DrillVerb(), new RecordingVerb(), new DifferencesVerb(), new PaperVerb(), new TrainVerb(), new WalkDownVerb(), new ProposalsVerb(), new RunVerb(), new TryVerb(), new WhyVerb(), new FailsVerb(), new CalcVerb(), new HaulVerb(), new RulesVerb(), new FormatVerb(), new NewVerb(), new ServeVerb(),
    ];
}
