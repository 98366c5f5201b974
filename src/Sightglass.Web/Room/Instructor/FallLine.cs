using Sightglass.Training.Evaluation;

namespace Sightglass.Web.Room.Instructor;

/// <summary>A line of the evaluation as it falls.</summary>
/// <param name="Mark">How it stands.</param>
/// <param name="What">What it is, in the language that is spoken.</param>
/// <param name="When">The moment, the limit, or how far it is; empty where there is nothing to say.</param>
/// <param name="IsCritical">Without it the drill is not passed.</param>
/// <param name="Shown">What shows it.</param>
/// <param name="Layer">What it is about.</param>
public sealed record FallLine(FallMark Mark, string What, string When, bool IsCritical, string Shown, EvaluationLayer Layer)
{
    /// <summary>Whether it is one of those that are seen at a glance: what is to be brought about, and what went wrong.</summary>
    public bool IsAtAGlance => Mark == FallMark.Broken || Layer is EvaluationLayer.Result or EvaluationLayer.Told;
}
