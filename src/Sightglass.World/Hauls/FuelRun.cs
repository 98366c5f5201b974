using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Fuel;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Situations;

namespace Sightglass.World.Hauls;

/// <summary>
/// The living fuel system of a machine while it runs: the throttle is moved as the run asks, the machine leans with the grade, and what every compartment holds is written down. What the pump takes
/// from which compartment, what returns to which, and whether the engine starves follows from valves, levels and pipes.
/// </summary>
public sealed class FuelRun
{
    private readonly Plan _plan;
    private readonly SituationStart _start;
    private readonly Pulling _pulling;
    private readonly Item _engine;
    private readonly ImmutableArray<(Item Item, Signal Volume)> _tanks;
    private readonly Signal _burnt;
    private readonly Signal _running;

    private FuelRun(Plan plan, SituationStart start, Pulling pulling, Item engine, ImmutableArray<(Item, Signal)> tanks)
    {
        (_plan, _start, _pulling, _engine, _tanks) = (plan, start, pulling, engine, tanks);
        (_burnt, _running) = (plan.FindSignal($"burnt of {engine.Name}")!, plan.FindSignal($"running of {engine.Name}")!);
    }

    /// <summary>kg/m³.</summary>
    public double Density => _engine.Parameters["density"].Number;

    /// <summary>m³/s that it burns in a position of its handle, with a share of the head-end load.</summary>
    public double Burns(string position, double headEnd) => _engine.Parameters["consumption"].ByPosition.GetValueOrDefault(position) + (headEnd * _engine.Parameters["head-end consumption"].Number);

    /// <summary>Binds what is said of the start; null where it does not fit, with the reasons.</summary>
    public static FuelRun? Bind(HaulTrain train, HaulRequest request, ICollection<HaulRefusal> refused)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(refused);
        Plan whole = train.Machine;
        string named = train.Pulling.Engine;
        if (!whole.Book.Items.TryGetValue(named, out Item? engine) || engine.Kind.Name != EngineKind.Name)
        {
            refused.Add(new(null, Say.With($"`{named}` is no engine: `pulls` names what burns the fuel.")));
            return null;
        }

        ImmutableArray<(Item Item, Signal Volume)> tanks = [.. whole.Book.ItemsInOrder.Where(i => i.Kind.Name == TankKind.Name && i.System == engine.System).Select(i => (i, whole.FindSignal($"volume of {i.Name}")!))];
        Plan plan = whole.Only(tanks.Select(t => t.Volume).Concat(new[] { "burnt", "running" }.Select(q => whole.FindSignal($"{q} of {engine.Name}")!)));
        ImmutableArray<StartValue> values = [.. Fills(request, tanks), .. request.Sets.Select(s => Value(plan, s.Name, s.Value, refused)).OfType<StartValue>()];
        if (refused.Count > 0)
        {
            return null;
        }

        DiagnosticList found = [];
        Situation situation = new() { Name = "start of the run", Span = default, Start = [.. values.GroupBy(v => v.Name).Select(g => g.Last())] };
        if (SituationStart.Bind(plan, situation, found) is { } start)
        {
            return new(plan, start, train.Pulling, engine, tanks);
        }

        foreach (Diagnostic d in found)
        {
            refused.Add(new(HaulInput.Sets, d.ToString()));
        }

        return null;
    }

    private static IEnumerable<StartValue> Fills(HaulRequest request, IEnumerable<(Item Item, Signal)> tanks) => request.Fill is { } fill
        ? tanks.Select(t => new StartValue($"fill of {t.Item.Name}", default) { From = fill, To = fill, Unit = UnitTable.One })
        : [];

    /// <summary>A starting value by name and text, as a situation of the book would write it.</summary>
    private static StartValue? Value(Plan plan, string name, string text, ICollection<HaulRefusal> refused)
    {
        if (!plan.Starts.TryGetValue(name, out StartRule? rule))
        {
            refused.Add(new(HaulInput.Sets, Say.With($"Nothing starts with a value for `{name}`; {Nearest.DidYouMean(name, plan.Starts.Keys) ?? Say.It("write the name of a control, or `fill of` a compartment")}")));
            return null;
        }

        if (!rule.Choices.IsDefaultOrEmpty)
        {
            if (rule.Choices.Contains(text))
            {
                return new(name, default) { OneOf = [text] };
            }

            refused.Add(new(HaulInput.Sets, Say.With($"`{name}` has no position `{text}`; {Nearest.DidYouMean(text, rule.Choices) ?? Say.With($"it has: {Say.Names(rule.Choices)}")}")));
            return null;
        }

        DiagnosticList found = [];
        if (QuantityText.TryParse(text, new SourceText("value", text).Between(0, text.Length), rule.Dimension, found, out Quantity value))
        {
            return new(name, default) { From = value.Si, To = value.Si, Unit = value.Unit };
        }

        refused.Add(new(HaulInput.Sets, Say.With($"`{name}` cannot start with `{text}`: write a value with its unit.")));
        return null;
    }

    /// <summary>m³ in all compartments at the start; null where its engine does not run or it has no fuel.</summary>
    public double? Volume(ICollection<HaulRefusal> refused)
    {
        ArgumentNullException.ThrowIfNull(refused);
        UnitFuel start = Run(1, 0, new([]), _ => 0, 1, out bool runs);
        if (!runs)
        {
            refused.Add(new(HaulInput.Sets, Say.With($"`{_engine.Name}` does not run at the start.")));
        }
        else if (!(start.Start > 0))
        {
            refused.Add(new(HaulInput.Fill, Say.It("There is no fuel in any compartment.")));
        }

        return refused.Count == 0 ? start.Start : null;
    }

    /// <summary>Runs the fuel of a machine along a run.</summary>
    /// <param name="unit">Which machine.</param>
    /// <param name="headEnd">Share of the head-end load that it bears.</param>
    /// <param name="notches">How its handle is moved.</param>
    /// <param name="grade">Rise over run under it by s since the start.</param>
    /// <param name="seconds">How long.</param>
    /// <param name="runs">Whether its engine ran at the start.</param>
    public UnitFuel Run(int unit, double headEnd, NotchPlan notches, Func<double, double> grade, double seconds, out bool runs)
    {
        ArgumentNullException.ThrowIfNull(notches);
        ArgumentNullException.ThrowIfNull(grade);
        using LaneBank bank = new(_plan);
        World world = new(bank, 0);
        _start.Apply(world, 1, 0);
        world.Do(new WorldAction.SetInput("head-end load", headEnd), SimTime.Zero);
        foreach ((double at, string position) in notches.Moves)
        {
            world.Do(new WorldAction.Operate(-1, _pulling.Handle, position), SimTime.FromSeconds(at));
        }

        double every = Math.Max(NotchPlan.Every, seconds / 1000), leans = 0;
        for (double s = 0; s < seconds + every; s += every)
        {
            double at = Math.Min(s, seconds), now = grade(at);
            if (now != leans)
            {
                world.Do(new WorldAction.SetInput("grade", now), SimTime.FromSeconds(at));
                leans = now;
            }

            world.SampleAt(SimTime.FromSeconds(at));
        }

        var moments = ImmutableArray.CreateBuilder<double>();
        var burnt = ImmutableArray.CreateBuilder<double>();
        List<double>[] volumes = [.. _tanks.Select(_ => new List<double>())];
        double? stopped = null;
        bool ran = false;
        world.OnSample = w =>
        {
            ran |= w.Value(_running) >= 0;
            stopped ??= w.Value(_running) >= 0 ? null : w.Now.Seconds;
            moments.Add(w.Now.Seconds);
            burnt.Add(w.Value(_burnt));
            for (int i = 0; i < _tanks.Length; i++)
            {
                volumes[i].Add(w.Value(_tanks[i].Volume));
            }
        };
        world.RunTo(SimTime.FromSeconds(seconds));
        runs = ran && stopped is not 0;
        return new(unit, headEnd > 0, moments.ToImmutable(), [.. _tanks.Select((t, i) => new CompartmentFuel(t.Item, [.. volumes[i]]))], burnt.ToImmutable(), stopped, Density);
    }
}
