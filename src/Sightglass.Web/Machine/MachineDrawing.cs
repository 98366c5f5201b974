using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Sightglass.Basics.Language;
using Sightglass.Book.Kinds;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Plans;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>The diagram of a system of a plan: laid out once in each language, drawn for whoever comes.</summary>
internal sealed class MachineDrawing
{
    private const string Prefix = "d-";

    /// <summary>Labels large enough to be 13 px on a screen of 1366, where the drawing is made smaller.</summary>
    private static readonly DiagramOptions s_fitted = new() { LabelSize = 22 };

    /// <summary>What goes through a vehicle is drawn as large as it is shown, and scrolls.</summary>
    private static readonly DiagramOptions s_through = new() { LabelSize = 13 };

    private static readonly ConditionalWeakTable<Plan, ConcurrentDictionary<(string Tongue, string System, int Vehicle, string Crossed), MachineDrawing>> s_drawn = [];

    /// <summary>A4 within margins of 12 mm, pixels of 1/96 inch.</summary>
    private const double PaperWide = 1032;

    private const double PaperHigh = 703;

    /// <summary>7.5 pt for letters of 13 px.</summary>
    private const double PaperScale = 10.0 / 13;

    private readonly DiagramOptions _options;

    private MachineDrawing(DiagramInput input)
    {
        Goes = input.Nodes.Any(n => n.IsEnd);
        _options = Goes ? s_through : s_fitted;
        Layout = DiagramLayout.Of(input, _options);
    }

    /// <summary>Whether lines go through from end to end, so that it is wide.</summary>
    public bool Goes { get; }

    public DiagramLayout Layout { get; }

    /// <summary>A system of one vehicle, or of the whole train with vehicles that look alike folded into one.</summary>
    public static MachineDrawing Of(Plan plan, MachineChoice choice, MachineSnapshot seen, bool truth)
    {
        string[] crossed = Crossed(plan, seen, truth);
        return choice.Vehicle is { } vehicle
            ? s_drawn.GetOrCreateValue(plan).GetOrAdd((Tongue.Spoken.Code, choice.System ?? "", vehicle, string.Join(';', crossed)), _ => new(DiagramInput.Of(plan.Book, choice.System, plan.Book.Vehicles.Length > 1 ? vehicle : null, crossed)))
            : new(DiagramFold.Of(DiagramInput.Of(plan.Book, choice.System, null, crossed), id => LookOf(seen, id)));
    }

    /// <summary>What decides how it is laid out: which hoses are crossed, and of a train which vehicles look alike. While it stays, the drawing stays.</summary>
    public static string KeyOf(Plan plan, MachineChoice choice, MachineSnapshot seen, bool truth)
    {
        IEnumerable<string> crossed = Crossed(plan, seen, truth);
        return string.Join(';', choice.Vehicle is not null ? crossed : crossed.Concat(seen.Positions.Select(p => $"{p.Key}={p.Value}")).Concat(seen.Faults.Select(f => $"{f.Item}!{f.Fault}")));
    }

    /// <summary>Whether it is too high for paper that lies, where its letters are to be large enough.</summary>
    public bool Stands => Layout.Sheet.Height > PaperHigh / PaperScale;

    /// <summary>What is printed: the drawing in pieces whose letters are at least 7.5 pt; it shows what <see cref="Render"/> has put into the page.</summary>
    public string RenderPieces() => DiagramPieces.Render(Layout, (Stands ? PaperHigh : PaperWide) / PaperScale, Prefix);

    public string Render(DiagramState state) =>
        DiagramDrawing.Render(Layout, state, _options, SvgOptions.Inline with { IdPrefix = Prefix });

    public DiagramValues Values(DiagramState state) => DiagramValues.Of(Layout, state, Prefix);

    // Who does not see truth sees hoses that are coupled.
    private static string[] Crossed(Plan plan, MachineSnapshot seen, bool truth) =>
        truth ? [.. seen.Faults.Where(f => plan.Book.Items[f.Item].Kind.Role == KindRole.Mistake).Select(f => f.Item).Distinct().Order(StringComparer.Ordinal)] : [];

    private static string LookOf(MachineSnapshot seen, string id) =>
        $"{seen.Positions.GetValueOrDefault(id)}{string.Concat(seen.Faults.Where(f => f.Item == id).Select(f => "!" + f.Fault))}";
}
