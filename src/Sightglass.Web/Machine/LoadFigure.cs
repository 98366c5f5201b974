using System.Net;
using Sightglass.Book.Model;
using Sightglass.Drawing.Loads;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>What the wheels of a vehicle carry, as a plan of it: lying for a page, standing for a phone.</summary>
internal sealed class LoadFigure
{
    private readonly LoadInput _input;

    private LoadFigure(LoadInput input) => _input = input;

    /// <summary>How it is read.</summary>
    public string Key => LoadWords.Key(_input);

    /// <summary>Null where the system has no axles that something weighs on.</summary>
    public static LoadFigure? Of(ClassBook book, MachineChoice choice) =>
        choice.System is { } system && LoadInput.Has(book, system) && LoadInput.Of(book, system, choice.Vehicle) is { Axles.IsEmpty: false } input ? new(input) : null;

    /// <summary>The figure with what it says, as markup.</summary>
    public string Html(MachineSnapshot seen, bool truth)
    {
        LoadState state = seen.Loads with { ShowTruth = truth };
        string Drawn(LoadOptions options) => LoadDrawing.Render(LoadLayout.Of(_input, state, options), state);
        IEnumerable<string> said = LoadWords.Of(_input, state).Select(s => $"<li>{WebUtility.HtmlEncode(s)}</li>").Concat(LoadWords.Wrong(_input, state).Select(s => $"<li class=\"truth-cap\">{WebUtility.HtmlEncode(s)}</li>"));
        return $"<div class=\"lying\">{Drawn(new())}</div><div class=\"standing-up\">{Drawn(LoadOptions.Narrow)}</div><ul class=\"loads-said\">{string.Concat(said)}</ul>";
    }
}
