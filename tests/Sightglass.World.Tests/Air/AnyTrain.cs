using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>
/// The demo's vehicles coupled in any order and facing, or its machine alone, and eight cases of it side by side in the lanes: any pressures and positions to begin with,
/// any control worked, anything broken at any time. All of it follows from one number.
/// </summary>
internal sealed class AnyTrain : IDisposable
{
    public const int Cases = 8;
    private const int MostVehicles = 9;
    private const double LookEvery = 7;

    /// <summary>Iterations of the eight lanes for one run of some minutes: an ordinary one takes a few thousand.</summary>
    private const int MostIterations = 2_000_000;

    /// <summary>What may change around it, SI: a steep grade, a canted curve, frost to heat, load by the train, faster than any of it runs.</summary>
    private static readonly (string Name, double Least, double Greatest)[] s_surroundings =
        [("grade", -0.04, 0.04), ("cant", -0.1, 0.1), ("ambient temperature", 243, 318), ("head-end load", 0, 1), ("speed", 0, 60)];

    private readonly Random _chance;
    private readonly bool _changing;
    private readonly Plan _plan;
    private readonly LaneBank _bank;
    private readonly ImmutableArray<(string Item, string Position)> _deeds;
    private readonly ImmutableArray<(string Item, string Fault)> _faults;
    private readonly ImmutableArray<(string Name, Plant.Signals.Signal Pressure)> _pressures;
    private readonly World[] _worlds = new World[Cases];
    private readonly List<string>[] _done = [.. Enumerable.Range(0, Cases).Select(_ => new List<string>())];
    private readonly double _seconds;

    /// <param name="number">From which all of it follows.</param>
    /// <param name="changing">Whether the surroundings change as well.</param>
    public AnyTrain(int number, bool changing = true)
    {
        (_chance, _changing) = (new(number), changing);
        ImmutableArray<TrainVehicle> vehicles = Draw();
        Name = $"number {number.ToString(CultureInfo.InvariantCulture)}: {string.Join(", ", vehicles.Select(v => v.Class + (v.IsTurned ? " turned" : "")))}";
        ClassBook book = Books.Curlew.Book;
        book = vehicles.Length == 1 ? book : (book with { Trains = book.Trains.SetItem("any", new("any", Span.None, "", vehicles)) }).Coupled("any");
        DiagnosticList found = [];
        _plan = PlanCompiler.Compile(book, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        _deeds = [.. book.ItemsInOrder.Where(i => i.Positions.Length > 1 && _plan.Items.ContainsKey(i.Name)).SelectMany(i => i.Positions.Select(p => (i.Name, p)))];
        _faults = [.. book.ItemsInOrder.Where(i => _plan.Items.ContainsKey(i.Name)).SelectMany(i => _plan.Items[i.Name].Faults.Keys.Select(f => (i.Name, f)))];
        _pressures = [.. book.ItemsInOrder.Select(i => (i.Name, Signal: _plan.FindSignal($"pressure of {i.Name}"))).Where(p => p.Signal is not null).Select(p => (p.Name, p.Signal!))];
        _seconds = 60 + (_chance.NextDouble() * 240);
        _bank = new(_plan);
        for (int lane = 0; lane < Cases; lane++)
        {
            _worlds[lane] = Begin(lane);
        }
    }

    /// <summary>Its number and its vehicles.</summary>
    public string Name { get; }

    public IReadOnlyList<World> Worlds => _worlds;

    /// <summary>What a case begins with, is done to and suffers.</summary>
    public string Story(int lane) => string.Join("; ", _done[lane]);

    /// <summary>Runs all cases to their end, looking at every pressure meanwhile.</summary>
    /// <returns>What is wrong, a line each; nothing where all is well. A case that could not be decided is not wrong: its world says so.</returns>
    public IReadOnlyList<string> Run()
    {
        List<string> wrong = [];
        (double Sum, double Size)[][] before = [.. _worlds.Select(All)];
        for (int lane = 0; lane < Cases; lane++)
        {
            World world = _worlds[lane];
            int own = lane;
            world.OnSample = w => Look(w, own, wrong);
            for (double at = LookEvery; at < _seconds; at += LookEvery)
            {
                world.SampleAt(SimTime.FromSeconds(at));
            }

            world.Limit = SimTime.FromSeconds(_seconds);
        }

        if (!Iterate())
        {
            wrong.Add($"{Name}: does not finish: {string.Join(", ", _worlds.Select(w => w.Now))}");
            return wrong;
        }

        for (int lane = 0; lane < Cases; lane++)
        {
            if (_worlds[lane].Trouble is null)
            {
                _worlds[lane].CutHere();
                Look(_worlds[lane], lane, wrong);
                Weigh(lane, before[lane], wrong);
            }
        }

        return wrong;
    }

    public void Dispose() => _bank.Dispose();

    /// <summary>One in eight is the machine alone.</summary>
    private ImmutableArray<TrainVehicle> Draw()
    {
        TrainVehicle own = new(TrainVehicle.ThisMachine, _chance.Next(2) == 0, Span.None);
        if (_chance.Next(8) == 0)
        {
            return [own with { IsTurned = false }];
        }

        string[] classes = [TrainVehicle.AnotherMachine, .. Books.Curlew.Book.Cars.Keys, .. Books.Curlew.Book.Cars.Keys];
        List<TrainVehicle> drawn = [.. Enumerable.Range(0, 1 + _chance.Next(MostVehicles - 1)).Select(_ => new TrainVehicle(classes[_chance.Next(classes.Length)], _chance.Next(2) == 0, Span.None))];
        drawn.Insert(_chance.Next(drawn.Count + 1), own);
        return [.. drawn];
    }

    private World Begin(int lane)
    {
        List<string> done = _done[lane];
        double share = _chance.Next(3) * 0.1;
        Situation any = new()
        {
            Name = "any",
            Span = Span.None,
            Start = [.. _plan.Starts.Values.Where(_ => _chance.NextDouble() < share).Select(Start).OfType<StartValue>()],
            Faults = [.. Enumerable.Range(0, _chance.Next(5)).Select(_ => Fault())],
        };
        done.AddRange(any.Start.Select(s => $"{s.Name}: {(s.OneOf.IsEmpty ? F(s.From) : s.OneOf[0])}"));
        done.AddRange(any.Faults.Select(f => $"{f.Fault} of {f.Items[0]} at {F(f.AfterFrom)} s ({string.Join(", ", f.Values.Select(v => F(v.From)))})"));
        DiagnosticList found = [];
        World world = new(_bank, lane);
        (SituationStart.Bind(_plan, any, found) ?? throw new InvalidOperationException(string.Join('\n', found))).Apply(world, 1, (ulong)lane);
        foreach (double at in Enumerable.Range(0, _chance.Next(25)).Select(_ => _chance.NextDouble() * _seconds))
        {
            (string item, string position) = _deeds[_chance.Next(_deeds.Length)];
            world.Do(new WorldAction.Operate(-1, item, position), SimTime.FromSeconds(at));
            done.Add($"{item} to {position} at {F(at)} s");
        }

        foreach ((string name, double least, double greatest) in s_surroundings.Where(_ => _changing && _chance.Next(4) == 0))
        {
            (double at, double value) = (_chance.NextDouble() * _seconds, least + ((greatest - least) * _chance.NextDouble()));
            world.Do(new WorldAction.SetInput(name, value), SimTime.FromSeconds(at));
            done.Add($"{name} {F(value)} at {F(at)} s");
        }

        if (any.Faults.Length > 0 && _chance.Next(3) == 0)
        {
            FaultStart mended = any.Faults[0];
            double at = mended.AfterFrom + ((_seconds - mended.AfterFrom) * _chance.NextDouble());
            world.Do(new WorldAction.TakeOut(mended.Items[0], mended.Fault), SimTime.FromSeconds(at));
            done.Add($"{mended.Fault} of {mended.Items[0]} mended at {F(at)} s");
        }

        return world;
    }

    private StartValue? Start(StartRule rule)
    {
        if (!rule.Choices.IsDefaultOrEmpty)
        {
            return new(rule.Name, Span.None) { OneOf = [rule.Choices[_chance.Next(rule.Choices.Length)]] };
        }

        double pressure = _chance.Next(3) == 0 ? 0 : _chance.NextDouble() * 1.1e6;
        return rule.Dimension == Dimension.Pressure ? new(rule.Name, Span.None) { From = pressure, To = pressure, Unit = UnitTable.SiOf(Dimension.Pressure) } : null;
    }

    /// <summary>Sizes from a fifth of the usual one to three times it; what is there or not at all stays so; a pin is one that there is; what a gauge shows falsely within 2 bar.</summary>
    private FaultStart Fault()
    {
        (string item, string fault) = _faults[_chance.Next(_faults.Length)];
        double at = _chance.NextDouble() * _seconds;
        return new(fault, [item], Span.None)
        {
            AfterFrom = at,
            AfterTo = at,
            Values = [.. _plan.Items[item].Faults[fault].Where(v => v.Name.Length > 0).Select(v => new StartValue(v.Name, Span.None)).Select(v => v with { From = Size(item, fault, v.Name) }).Select(v => v with { To = v.From })],
        };
    }

    private double Size(string item, string fault, string value)
    {
        FaultValue one = _plan.Items[item].Faults[fault].First(v => v.Name == value);
        if (!one.Known.IsEmpty)
        {
            return one.Known[_chance.Next(one.Known.Length)];
        }

        double usual = one.Usual;
        double size = usual == 0 ? ((2 * _chance.NextDouble()) - 1) * 2e5 : usual * (0.2 + (2.8 * _chance.NextDouble()));
        return usual is > 0.01 and <= 1 ? Math.Min(size, 1) : size;
    }

    private bool Iterate()
    {
        for (int iterations = 0; iterations < MostIterations;)
        {
            bool any = false;
            foreach (World world in _worlds)
            {
                any |= world.Advance();
            }

            if (!any)
            {
                return true;
            }

            foreach (int n in _plan.Stepped)
            {
                LaneGroup group = _bank.Group(n);
                for (; Enumerable.Range(0, Cases).Any(lane => group.Task(lane) != LaneTask.None); iterations++)
                {
                    group.Iterate();
                }
            }
        }

        return false;
    }

    private void Look(World world, int lane, List<string> wrong)
    {
        foreach ((string name, Plant.Signals.Signal signal) in _pressures)
        {
            double pressure = world.Value(signal);
            if (!(pressure >= -Physical) && wrong.Count < 20)
            {
                wrong.Add($"{Name}, case {lane}: {name} at {F(pressure)} Pa after {world.Now}; {Story(lane)}");
            }
        }
    }

    private void Weigh(int lane, (double Sum, double Size)[] before, List<string> wrong)
    {
        (double Sum, double Size)[] after = All(_worlds[lane]);
        for (int n = 0; n < after.Length; n++)
        {
            double drift = Math.Abs(after[n].Sum - before[n].Sum);
            if (!(drift <= 1e-12 * Math.Max(before[n].Size, after[n].Size)))
            {
                wrong.Add($"{Name}, case {lane}: {_plan.NetworkNames[n]} drifts by {drift.ToString("0.0e0", CultureInfo.InvariantCulture)} of {F(after[n].Size)} kg; {Story(lane)}");
            }
        }
    }

    private static (double Sum, double Size)[] All(World world) => [.. Enumerable.Range(0, world.Plan.AmountNames.Length).Select(n => Masses.Of(world, n))];

    private static string F(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>Pressures are told above the ordinary atmosphere, Pa (ISO 2533).</summary>
    private const double Physical = 101_325;
}
