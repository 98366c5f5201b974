using System.Collections.Immutable;
using Sightglass.Drawing.Svg;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>Works out the values of a <see cref="DiagramValues"/>.</summary>
internal sealed class DiagramValueBuilder(DiagramLayout layout, DiagramState state, string prefix)
{
    private readonly DiagramIds _ids = new(layout.Input);

    private readonly ImmutableDictionary<(string Id, string Attribute), string>.Builder _values =
        ImmutableDictionary.CreateBuilder<(string Id, string Attribute), string>();

    public ImmutableDictionary<(string Id, string Attribute), string> Build()
    {
        foreach (DiagramBody body in layout.Bodies)
        {
            if (body.Node.Role == DiagramRole.Tank)
            {
                Tank(body);
            }
            else
            {
                Machine(body.Node);
            }
        }

        foreach (DiagramPart part in layout.Parts)
        {
            Part(part.Node);
        }

        foreach (DiagramPipe pipe in layout.Pipes)
        {
            Pipe(pipe);
        }

        foreach (DiagramGlass glass in layout.Glasses)
        {
            Glass(glass);
        }

        foreach (DiagramInstrument instrument in layout.Instruments)
        {
            Instrument(instrument.Node);
        }

        return _values.ToImmutable();
    }

    private void Set(string kind, string node, string attribute, string value) => _values[($"{prefix}{kind}-{_ids[node]}", attribute)] = value;

    private void Set(string kind, string node, string attribute, double value) => Set(kind, node, attribute, SvgNumber.Format(value));

    private void Tank(DiagramBody body)
    {
        string id = body.Node.Id;
        if (body.Node.IsClosed)
        {
            Vessel(id);
            return;
        }

        bool known = state.Levels.TryGetValue(id, out double level);
        double y = Math.Clamp(M.TankHeight * (1 - level), 0, M.TankHeight);
        Set("tr", id, "class", known && state.ShowTruth ? "tr" : "tr off");
        Set("lv", id, "y", y);
        Set("lv", id, "height", M.TankHeight - y);
        Set("ls", id, "y1", y);
        Set("ls", id, "y2", y);
        Set("lt", id, "y", Math.Clamp(y + 24, 62, M.TankHeight - 12));
        Set("lt", id, DiagramDelta.Text, state.Amounts.GetValueOrDefault(id, ""));
        Leak(id);
    }

    private void Vessel(string id)
    {
        Set("tr", id, "class", state.Amounts.ContainsKey(id) && state.ShowTruth ? "tr" : "tr off");
        Set("lt", id, DiagramDelta.Text, state.Amounts.GetValueOrDefault(id, ""));
        Leak(id);
    }

    private void Leak(string id)
    {
        DiagramLeak? leak = state.ShowTruth ? state.Leaks.GetValueOrDefault(id) : null;
        Set("lk", id, "class", leak is null ? "leak off" : "leak");
        Set("l1", id, DiagramDelta.Text, leak?.Text ?? "");
        Set("l2", id, DiagramDelta.Text, leak?.Detail ?? "");
    }

    private void Machine(DiagramNode node)
    {
        DiagramMachine machine = state.Machines.GetValueOrDefault(node.Id) ?? new DiagramMachine(false);
        Set("it", node.Id, "class", machine.Runs ? "it machine runs" : "it machine");
        Set("m1", node.Id, DiagramDelta.Text, machine.First);
        Set("m2", node.Id, DiagramDelta.Text, machine.Second);
    }

    private void Part(DiagramNode node)
    {
        double opening = state.Openings.GetValueOrDefault(node.Id, 1);
        string place = opening <= 0 ? "closed" : opening >= 1 ? "open" : "part";
        Set("it", node.Id, "class", $"it part-{node.Symbol.ToString().ToLowerInvariant()} {place}");
        if (node.IsSwitch)
        {
            Set("it", node.Id, "aria-checked", opening > 0 ? "true" : "false");
        }
    }

    private void Pipe(DiagramPipe pipe)
    {
        double flow = pipe.Terms.Sum(t => state.Flows.GetValueOrDefault(t.Node) * t.Sign);
        string style = Math.Abs(flow) < state.StillBelow ? "flow" : flow > 0 ? "flow on" : "flow on rev";
        _values[($"{prefix}fl-{pipe.Id}", "class")] = style;
    }

    private void Glass(DiagramGlass glass)
    {
        DiagramReading? reading = state.Readings.GetValueOrDefault(glass.Node.Id);
        double top = glass.Top + 2;
        double bottom = glass.Bottom - 2;
        double y = bottom - ((bottom - top) * Math.Clamp(reading?.Fraction ?? 0, 0, 1));
        Set("gl", glass.Node.Id, "y", y);
        Set("gl", glass.Node.Id, "height", bottom - y);
        Set("gv", glass.Node.Id, DiagramDelta.Text, reading?.Text ?? "");
    }

    private void Instrument(DiagramNode node)
    {
        if (node.Role == DiagramRole.Control)
        {
            Set("it", node.Id, "class", state.Moved.Contains(node.Id) ? "it control moved" : "it control");
            if (node.IsSwitch)
            {
                Set("it", node.Id, "aria-checked", state.Openings.GetValueOrDefault(node.Id) > 0 ? "true" : "false");
            }
        }
        else
        {
            Set("gv", node.Id, DiagramDelta.Text, state.Readings.GetValueOrDefault(node.Id)?.Text ?? "");
        }
    }
}
