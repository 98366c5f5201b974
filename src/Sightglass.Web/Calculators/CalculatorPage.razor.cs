using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Svg;
using Sightglass.Paper.Papers;
using Sightglass.Plant.Calculators.Sheets;
using Sightglass.Web.Live;

namespace Sightglass.Web.Calculators;

/// <summary>One calculator, worked out anew with every letter that is typed; its address holds what was put in.</summary>
public sealed partial class CalculatorPage
{
    private readonly List<CalculatorRefusal> _refused = [];
    private CalculatorAsk _ask = new(new Dictionary<string, string>(), null);

    /// <summary>What the address said when it was read. Fields are filled with that alone: an answer that comes late never writes over what is typed meanwhile.</summary>
    private CalculatorAsk _read = new(new Dictionary<string, string>(), null);

    /// <summary>The address that this page wrote itself: nothing new is in it.</summary>
    private string? _written;

    /// <summary>Part of the address that says which.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private CalculatorSheet? Sheet { get; set; }

    private Calculation? Worked { get; set; }

    private IReadOnlyList<CalculatorRefusal> Refused => _refused;

    private string Picture(bool narrow) => Worked is { } worked ? CalculatorPicture.Of(worked, _ask.System, SvgOptions.Inline, narrow) : "";

    private static (UnitSystem? System, string Words)[] Systems => [(null, Say.It("both")), (UnitSystem.Us, Say.It("US")), (UnitSystem.Si, Say.It("metric"))];

    protected override void OnParametersSet()
    {
        CalculatorSheet? sheet = CalculatorAsk.Find(Name);
        if (sheet is null || (sheet == Sheet && Navigation.Uri == _written))
        {
            Sheet = sheet;
            return;
        }

        Sheet = sheet;
        CalculatorAsk asked = CalculatorAsk.Of(sheet, new(Navigation.Uri));
        _ask = asked.Typed.Count > 0 ? asked : asked with { Typed = CalculatorStart.Of(sheet, Room.Shelf.Book) };
        _read = _ask;
        Work(sheet);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            try
            {
                await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
                await script.InvokeVoidAsync("alive");
            }
            catch (JSDisconnectedException)
            {
                // The browser has left in the meantime.
            }
        }
    }

    private void Put(CalculatorValue input, ChangeEventArgs change)
    {
        Dictionary<string, string> typed = new(_ask.Typed, StringComparer.Ordinal) { [input.Name] = change.Value?.ToString() ?? "" };
        Ask(_ask with { Typed = typed });
    }

    private void In(UnitSystem? system) => Ask(_ask with { System = system });

    private void Ask(CalculatorAsk ask)
    {
        _ask = ask;
        Work(Sheet!);
        _written = Navigation.ToAbsoluteUri(ask.Address(Sheet!)).AbsoluteUri;
        Navigation.NavigateTo(_written, replace: true);
    }

    private void Work(CalculatorSheet sheet)
    {
        _refused.Clear();
        Worked = Calculation.Of(sheet, _ask.Typed, _refused);
    }

    private static string IdOf(CalculatorValue input) => "in-" + input.Name.Replace(' ', '-');

    private string TypedAt(CalculatorValue input) => _ask.Typed.GetValueOrDefault(input.Name, "");

    private string ChosenAt(CalculatorValue input) => CalculatorReader.Read(input, TypedAt(input), out _) is { } given ? given.Text : input.Usual ?? input.Choices[0];

    private string? WrongAt(CalculatorValue input) => Refused.FirstOrDefault(r => r.Input == input.Name)?.Sentence;

    /// <summary>An input in the unit of the other side of the border.</summary>
    private string OtherOf(CalculatorValue input) =>
        TypedAt(input).Trim().Length > 0 && CalculatorReader.Read(input, TypedAt(input), out _) is { } given && UnitPairs.Other(given.Value.Unit) is { } unit ? QuantityFormat.Text(given.Value.Si, unit) : "";

    private string OtherOf(Calculation worked, int result) =>
        _ask.System is null && UnitPairs.Other(UnitTable.Get(worked.Sheet.Results[result].Example)) is { } unit ? QuantityFormat.Text(worked.Results[result], unit) : "";

    /// <summary>A formula as it is written by hand.</summary>
    private static string Pretty(string formula) => formula
        .Replace(" * ", " · ", StringComparison.Ordinal).Replace(" - ", " − ", StringComparison.Ordinal).Replace("^2", "²", StringComparison.Ordinal).Replace("^3", "³", StringComparison.Ordinal)
        .Replace("sqrt(", "√(", StringComparison.Ordinal).Replace("<=", "≤", StringComparison.Ordinal);
}
