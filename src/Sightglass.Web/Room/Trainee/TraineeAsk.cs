namespace Sightglass.Web.Room.Trainee;

/// <summary>What a trainee's page asks for. All texts are as the page sent them: nothing is believed.</summary>
internal sealed record TraineeAsk
{
    /// <summary>What is to be done: <c>walk</c>, <c>operate</c> …</summary>
    public string? Do { get; init; }

    /// <summary>The thing, place, role, protection or drill that it is about.</summary>
    public string? What { get; init; }

    /// <summary>A position, a target, or what is said or written.</summary>
    public string? To { get; init; }

    /// <summary>Whether they have been told that it is not theirs.</summary>
    public bool Sure { get; init; }
}
