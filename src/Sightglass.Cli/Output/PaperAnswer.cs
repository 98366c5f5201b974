namespace Sightglass.Cli.Output;

/// <summary>What <c>paper --json</c> answers.</summary>
/// <param name="Title">Of the paper.</param>
/// <param name="Language">Of its words.</param>
/// <param name="Sheet">The sheet it was written for.</param>
/// <param name="Units">In which quantities are said: <c>book</c>, <c>us</c>, <c>si</c>.</param>
/// <param name="Pdf">The file, or null.</param>
/// <param name="Html">The file, or null.</param>
/// <param name="Pages">Of the PDF; null without one.</param>
/// <param name="LeastLettersPt">The least size of words on its drawings; null without a PDF or a drawing.</param>
internal sealed record PaperAnswer(string Title, string Language, string Sheet, string Units, string? Pdf, string? Html, int? Pages, double? LeastLettersPt);
