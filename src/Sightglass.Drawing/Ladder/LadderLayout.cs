using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Ladder;

/// <summary>A circuit drawing as data, pixels, y downwards.</summary>
public sealed record LadderLayout
{
    public required LadderInput Input { get; init; }

    public required Bounds Sheet { get; init; }

    public required ImmutableArray<LadderBar> Bars { get; init; }

    public required ImmutableArray<LadderRung> Rungs { get; init; }

    /// <summary>Where a part meets a bar.</summary>
    public required ImmutableArray<(double X, double Y)> Dots { get; init; }

    /// <summary>The rows, from their upper rail to their lower one with all their words: what paper may cut between.</summary>
    public required ImmutableArray<Bounds> Rows { get; init; }

    /// <summary>One row alone, for paper.</summary>
    /// <param name="number">From 0.</param>
    public LadderLayout Row(int number)
    {
        Bounds row = Rows[number];
        bool In(double y) => row.Low <= y && y <= row.High;
        return this with
        {
            Sheet = row,
            Bars = [.. Bars.Where(b => In(b.Y))],
            Rungs = [.. Rungs.Where(r => In(r.Top))],
            Dots = [.. Dots.Where(d => In(d.Y))],
            Rows = [row],
        };
    }

    public static LadderLayout Of(LadderInput input, LadderOptions? options = null) => new LadderPlanner(input, options ?? new()).Plan();
}
