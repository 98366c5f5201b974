using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Ladder;

/// <summary>All that changes in a circuit drawing when its state changes.</summary>
internal sealed class LadderValueBuilder(LadderLayout layout, LadderState state, string prefix)
{
    private readonly LadderIds _ids = new(layout.Input);

    private readonly ImmutableDictionary<(string Id, string Attribute), string>.Builder _values = ImmutableDictionary.CreateBuilder<(string Id, string Attribute), string>();

    public ImmutableDictionary<(string Id, string Attribute), string> Build()
    {
        double lower = state.Volts.GetValueOrDefault(layout.Input.Rails.Minus);
        foreach (LadderBar bar in layout.Bars)
        {
            double volts = state.Volts.GetValueOrDefault(bar.Wire.Id) - lower;
            string rail = bar.IsRail ? " rail-wire" : "";
            _values[($"{prefix}w-{bar.Number}", "class")] = StyleOf(volts) + rail;
            _values[($"{prefix}wv-{bar.Number}", DiagramDelta.Text)] = state.ShowTruth && Math.Abs(volts) >= LadderState.Said ? Number(volts, "V") : "";
        }

        foreach (LadderRung rung in layout.Rungs)
        {
            Rung(rung, lower);
        }

        return _values.ToImmutable();
    }

    private string StyleOf(double volts) => state.ShowTruth && Math.Abs(volts) >= LadderState.Dead ? "wire live" : "wire";

    private double VoltsOf(string wire) => state.Volts.GetValueOrDefault(wire);

    private void Rung(LadderRung rung, double lower)
    {
        LadderPart part = rung.Part;
        string id = _ids[part.Id];
        (string up, string down) = rung.IsTurned ? (part.Minus, part.Plus) : (part.Plus, part.Minus);
        _values[($"{prefix}lu-{id}", "class")] = StyleOf(VoltsOf(up) - lower);
        _values[($"{prefix}ld-{id}", "class")] = StyleOf(VoltsOf(down) - lower);
        bool made = !part.Moves || state.Made.Contains(part.Id);
        string moves = part.Moves ? made ? " made" : " broken" : "";
        _values[($"{prefix}it-{id}", "class")] = $"it l-{part.Symbol.ToString().ToLowerInvariant()}{moves}{(state.At.Contains(part.Id) ? " at" : "")}";
        if (part.IsOperated && part.Moves)
        {
            _values[($"{prefix}it-{id}", "aria-checked")] = made ? "true" : "false";
        }

        double amperes = state.ShowTruth ? state.Amperes.GetValueOrDefault(part.Id) : 0;
        // Of a source what it gives goes up, to its plus side.
        bool falls = (amperes > 0) != (part.IsSource != rung.IsTurned);
        _values[($"{prefix}fl-{id}", "class")] = Math.Abs(amperes) < LadderState.Least ? "flow" : falls ? "flow on" : "flow on rev";
        _values[($"{prefix}la-{id}", DiagramDelta.Text)] = Math.Abs(amperes) < LadderState.Least ? "" : Number(amperes, "A");
    }

    private static string Number(double value, string unit)
    {
        double size = Math.Abs(value);
        string format = size >= 9.95 ? "0" : size >= 0.095 ? "0.0" : "0.00";
        string text = Math.Round(value, format.Length > 1 ? format.Length - 2 : 0).ToString(format, CultureInfo.InvariantCulture);
        return $"{(text.StartsWith('-') ? "−" + text[1..] : text)} {unit}";
    }
}
