namespace Sightglass.Training.Evaluation;

/// <summary>What a line of an evaluation is about; the first two fail a drill at once.</summary>
public enum EvaluationLayer
{
    /// <summary>What must not come about: states, injuries.</summary>
    Forbidden,

    /// <summary>Who may touch what, on whose permission; protections given back.</summary>
    Authority,

    /// <summary>An order that safety needs.</summary>
    Order,

    /// <summary>What is so at the end, and by when.</summary>
    Result,

    /// <summary>Who was to be told.</summary>
    Told,

    /// <summary>Help that was asked for.</summary>
    Help,
}
