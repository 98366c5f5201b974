using Sightglass.Network.Compile;

namespace Sightglass.Network.Phasors;

/// <summary>
/// Collects terminals, lines, sources and loads, and compiles them into a <see cref="LoadFlow"/>. Each phase and each neutral is a terminal of its own, so that an open pin, a missing phase or
/// a short between two wires is nothing special.
/// </summary>
public sealed class LoadFlowBuilder
{
    /// <summary>Wires of a line at most: three phases and a neutral.</summary>
    public const int MostWires = 4;

    private readonly List<string> _terminals = [];
    private readonly List<(string Name, double Start)> _inputs = [];
    private readonly List<LineRow> _lines = [];
    private readonly List<LoadRow> _loads = [];
    private readonly List<SourceRow> _sources = [];
    private Input? _frequency;

    /// <param name="name">For findings.</param>
    public Terminal AddTerminal(string name)
    {
        _terminals.Add(name);
        return new(_terminals.Count - 1);
    }

    /// <summary>Adds a number that is set from outside.</summary>
    /// <param name="start">Its value when nobody has set another.</param>
    public Input AddInput(string name, double start)
    {
        _inputs.Add((name, start));
        return new(_inputs.Count - 1);
    }

    /// <summary>Gives a terminal its voltage to the frame: an electromotive force, which a line with the source's impedance follows.</summary>
    /// <param name="volts">Its magnitude, V.</param>
    /// <param name="direction">Of magnitude 1; <see cref="Phasor.OfPhase"/>.</param>
    public void Hold(Terminal terminal, Input volts, Phasor direction) => _sources.Add(new(terminal.Index, volts.Index, direction));

    /// <summary>Joins a terminal to the frame: 0 V.</summary>
    public void Ground(Terminal terminal) => _sources.Add(new(terminal.Index, -1, default));

    /// <summary>Frequency over that at which reactances were told: they are multiplied by it. 1 where it is not said.</summary>
    public void ScaleReactances(Input frequency) => _frequency = frequency;

    /// <summary>Wires side by side, each with an impedance of its own and one to each neighbour.</summary>
    /// <param name="from">Where its wires begin, 1…4.</param>
    /// <param name="to">As many where they end.</param>
    /// <param name="impedance">Ω, from.Length², one row after the other; can be inverted.</param>
    /// <param name="closed">For each wire an input: above 0 it is whole, else open. Empty for always.</param>
    /// <param name="heat">Input by which the wires' own resistance is multiplied: 1 + α·ΔT.</param>
    /// <param name="ratio">Voltage at <paramref name="from"/> over that at <paramref name="to"/> without a load, above 0: a transformer of stars, its impedance told on the second side.</param>
    public Line AddLine(string name, ReadOnlySpan<Terminal> from, ReadOnlySpan<Terminal> to, ReadOnlySpan<Phasor> impedance, ReadOnlySpan<Input> closed = default, Input? heat = null, double ratio = 1)
    {
        if (from.Length is < 1 or > MostWires || to.Length != from.Length || impedance.Length != from.Length * from.Length || (closed.Length != 0 && closed.Length != from.Length))
        {
            throw new ArgumentException($"'{name}': a line has 1 to 4 wires, as many ends as beginnings, an impedance for each pair and no input or one for each wire.");
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ratio);
        if (!SmallMatrix.Invert(impedance.ToArray(), from.Length))
        {
            throw new ArgumentException($"'{name}': the impedances of a line can be inverted; a wire without any is no line.", nameof(impedance));
        }

        int[] inputs = new int[from.Length];
        int[] begin = new int[from.Length], end = new int[from.Length];
        for (int w = 0; w < from.Length; w++)
        {
            inputs[w] = closed.IsEmpty ? -1 : closed[w].Index;
            (begin[w], end[w]) = (from[w].Index, to[w].Index);
        }

        _lines.Add(new(name, begin, end, impedance.ToArray(), ratio, inputs, heat?.Index ?? -1));
        return new(_lines.Count - 1);
    }

    /// <summary>A load between two terminals, or between one and the frame.</summary>
    /// <param name="volts">At which it draws what the inputs say, above 0.</param>
    /// <param name="active">W at those volts; below 0 for what feeds.</param>
    /// <param name="reactive">var at those volts, above 0 lagging.</param>
    /// <param name="floor">
    /// Share of its volts below which it no longer keeps its power or current but counts as the impedance it has there: 0 for never, which lets the voltage collapse; common practice 0.5…0.8.
    /// </param>
    public Load AddLoad(string name, Terminal from, Terminal? to, LoadKind kind, double volts, Input active, Input? reactive = null, double floor = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volts);
        ArgumentOutOfRangeException.ThrowIfNegative(floor);
        _loads.Add(new(name, from.Index, to?.Index ?? -1, kind, volts, floor, active.Index, reactive?.Index ?? -1));
        return new(_loads.Count - 1);
    }

    /// <summary>Compiles what was added. The builder may be used further; the load flow does not change.</summary>
    public LoadFlow Build() => new([.. _terminals], [.. _inputs], [.. _lines], [.. _loads], [.. _sources], _frequency?.Index ?? -1);
}
