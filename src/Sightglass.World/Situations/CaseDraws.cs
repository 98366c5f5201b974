using Sightglass.Basics.Draws;

namespace Sightglass.World.Situations;

/// <summary>
/// The numbers behind one case: one in 0 ≤ u &lt; 1 for each thing that is drawn, in the order of the situation. Drawn by (seed, case,
/// order), so that renaming changes nothing; single ones can be held at a number of one's own, for shrinking and for maps.
/// </summary>
/// <param name="seed">Of the trial.</param>
/// <param name="caseNumber">Of the case.</param>
public sealed class CaseDraws(ulong seed, ulong caseNumber)
{
    private static readonly DrawKey s_key = DrawKey.Of("situation");

    private SortedDictionary<int, double>? _held;

    public ulong Seed { get; private set; } = seed;

    public ulong Case { get; private set; } = caseNumber;

    /// <summary>What is held, by order.</summary>
    public IReadOnlyDictionary<int, double> Held => _held ?? [];

    public double Uniform(int order) =>
        _held is not null && _held.TryGetValue(order, out double held) ? held : Draw.Uniform(Seed, Case, s_key.At(order));

    /// <summary>Another case with nothing held.</summary>
    public void Use(ulong seed, ulong caseNumber)
    {
        (Seed, Case) = (seed, caseNumber);
        _held?.Clear();
    }

    /// <summary>The same case with one number held.</summary>
    public CaseDraws With(int order, double u)
    {
        CaseDraws copy = new(Seed, Case) { _held = _held is null ? [] : new(_held) };
        copy._held![order] = u;
        return copy;
    }
}
