using Sightglass.Book.Model;
using Sightglass.Training.Evaluation;

namespace Sightglass.Cli.Output;

/// <summary>Words of drills for the terminal.</summary>
internal static class DrillWords
{
    public static string Level(DrillLevel level) => level switch
    {
        DrillLevel.FirstDay => "the first day",
        DrillLevel.Working => "those who learn to work with it",
        _ => "those who are to show that they can",
    };

    public static string Layer(EvaluationLayer layer) => layer switch
    {
        EvaluationLayer.Forbidden => "What must not come about",
        EvaluationLayer.Authority => "Whose it is",
        EvaluationLayer.Order => "Orders that safety needs",
        EvaluationLayer.Result => "What came of it",
        EvaluationLayer.Told => "Who had to know",
        _ => "Help",
    };
}
