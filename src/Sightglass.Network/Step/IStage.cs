using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>One stage of <see cref="Rodas3"/>, row by row, so that its sums are made within the loops of the substitution.</summary>
internal interface IStage
{
    /// <summary>Whether its right side holds the flows at its own amounts.</summary>
    static abstract bool HasFlows { get; }

    /// <summary>The right side of a row.</summary>
    /// <param name="flow">Sum of the row's flows, where the stage has its own.</param>
    static abstract Lanes Right(in Stages s, int row, Lanes flow);

    /// <summary>Takes in how much an amount changes. May be told twice: the second time counts.</summary>
    static abstract void Take(in Stages s, int row, Lanes change);
}
