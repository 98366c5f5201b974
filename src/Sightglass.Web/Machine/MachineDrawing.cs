using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Sightglass.Basics.Language;
using Sightglass.Book.Kinds;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Ladder;
using Sightglass.Drawing.Shapes;
using Sightglass.Plant.Plans;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>The picture of a system of a plan: laid out once in each language, drawn for whoever comes.</summary>
internal abstract class MachineDrawing
{
    protected const string Prefix = "d-";

    /// <summary>Where a drawing stands beside other things it scrolls before its letters are smaller than this, pixels.</summary>
    private const double LeastLetters = 13;

    /// <summary>Letters are never shown larger than this, pixels.</summary>
    private const double LargestLetters = 19;

    private static readonly ConditionalWeakTable<Plan, ConcurrentDictionary<(string Tongue, string System, int Vehicle, string Crossed), MachineDrawing>> s_drawn = [];

    /// <summary>Whether lines go through from end to end, so that it is wide.</summary>
    public virtual bool Goes => false;

    /// <summary>Whether it is a line through the vehicle more than a system of it.</summary>
    public virtual bool IsLine => Goes;

    /// <summary>Whether it is too high for paper that lies, where its letters are to be large enough.</summary>
    public virtual bool Stands => false;

    /// <summary>Whether hoses are drawn crossed.</summary>
    public virtual bool IsCrossed => false;

    /// <summary>Whether there is nothing to draw: a system that is read at its instruments alone.</summary>
    public virtual bool IsEmpty => false;

    public abstract Bounds Sheet { get; }

    /// <summary>What a page needs to know of its size: as wide as it is drawn, where it scrolls rather than shrinks, and how wide it may grow, so that a system of one tank does not shout.</summary>
    public string Size => FormattableString.Invariant($"{(Goes ? $"--natural:{(int)Sheet.Width}px;" : "")}--least:{Math.Ceiling(Sheet.Width * LeastLetters / Letters)}px;--most:{Math.Ceiling(Sheet.Width * LargestLetters / Letters)}px");

    /// <summary>Size of its letters as it is drawn, pixels.</summary>
    protected abstract double Letters { get; }

    /// <summary>How to read it, in a sentence.</summary>
    public abstract string Key { get; }

    /// <summary>What of the truth is shown how, in a sentence.</summary>
    public abstract string TruthKey { get; }

    /// <summary>A system of one vehicle, or of the whole train with vehicles that look alike folded into one.</summary>
    public static MachineDrawing Of(Plan plan, MachineChoice choice, MachineSnapshot seen, bool truth)
    {
        string[] crossed = Crossed(plan, seen, truth);
        int? vehicle = choice.Vehicle ?? (CircuitPicture.Draws(plan.Book, choice.System) ? plan.Book.Vehicles.First(v => v.IsTheMachine).Index : null);
        return vehicle is { } one
            ? s_drawn.GetOrCreateValue(plan).GetOrAdd((Tongue.Spoken.Code, choice.System ?? "", one, string.Join(';', crossed)), _ => Make(plan, choice.System, plan.Book.Vehicles.Length > 1 ? one : null, crossed))
            : new PipePicture(DiagramFold.Of(DiagramInput.Of(plan.Book, choice.System, null, crossed), id => LookOf(seen, id)));
    }

    /// <summary>What decides how it is laid out: which hoses are crossed, and of a train which vehicles look alike. While it stays, the drawing stays.</summary>
    public static string KeyOf(Plan plan, MachineChoice choice, MachineSnapshot seen, bool truth)
    {
        IEnumerable<string> crossed = Crossed(plan, seen, truth);
        return string.Join(';', choice.Vehicle is not null ? crossed : crossed.Concat(seen.Positions.Select(p => $"{p.Key}={p.Value}")).Concat(seen.Faults.Select(f => $"{f.Item}!{f.Fault}")));
    }

    /// <summary>The drawing as seen at one moment.</summary>
    /// <param name="seen">The moment.</param>
    /// <param name="truth">With what nobody can see.</param>
    /// <param name="operated">Whether controls in it are operated there; else it is only looked at.</param>
    public abstract string Render(MachineSnapshot seen, bool truth, bool operated = true);

    /// <summary>What of it changes with what is seen.</summary>
    public abstract DiagramValues Values(MachineSnapshot seen, bool truth);

    /// <summary>What is printed of a drawing that is too wide: pieces whose letters are at least 7.5 pt; they show what <see cref="Render"/> has put into the page.</summary>
    public virtual string RenderPieces() => "";

    private static MachineDrawing Make(Plan plan, string? system, int? vehicle, string[] crossed) => CircuitPicture.Draws(plan.Book, system)
        ? new CircuitPicture(LadderInput.Of(plan.Book, system, vehicle))
        : new PipePicture(DiagramInput.Of(plan.Book, system, vehicle, crossed));

    // Who does not see truth sees hoses that are coupled.
    private static string[] Crossed(Plan plan, MachineSnapshot seen, bool truth) =>
        truth ? [.. seen.Faults.Where(f => plan.Book.Items[f.Item].Kind.Role == KindRole.Mistake).Select(f => f.Item).Distinct().Order(StringComparer.Ordinal)] : [];

    private static string LookOf(MachineSnapshot seen, string id) =>
        $"{seen.Positions.GetValueOrDefault(id)}{string.Concat(seen.Faults.Where(f => f.Item == id).Select(f => "!" + f.Fault))}";
}
