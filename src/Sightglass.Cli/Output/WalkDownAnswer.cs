using Sightglass.Training.WalkDowns;

namespace Sightglass.Cli.Output;

/// <summary>What <c>walkdown --json</c> answers: the file that was written, what was taken in, or what was found so far.</summary>
internal sealed record WalkDownAnswer
{
    public string? Html { get; init; }

    public int? Places { get; init; }

    public int? Items { get; init; }

    public int? New { get; init; }

    public int? Newer { get; init; }

    public int? Known { get; init; }

    public int? Proposed { get; init; }

    public IReadOnlyList<Finding>? Found { get; init; }

    /// <param name="State">seen, not seen, differs.</param>
    internal sealed record Finding(Guid Id, int Revision, string? RoadNumber, string Place, string? Item, string State, string? Label, string? OpensTowards, string? Note, string? Photo, string? Voice, string By, DateTimeOffset At)
    {
        public static Finding Of(WalkDownEntry e) => new(e.Id, e.Revision, e.RoadNumber, e.Place, e.Item, WalkDownText.Words(e.State), e.Label, e.OpensTowards, e.Note, e.Photo, e.Voice, e.By, e.At);
    }
}
