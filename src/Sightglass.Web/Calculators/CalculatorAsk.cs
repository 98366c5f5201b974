using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Web.Calculators;

/// <summary>What an address asks of a calculator: its values and the units of what comes out, so that it can be sent to somebody or kept.</summary>
/// <param name="Typed">By the names of the inputs, as they were typed; what is not there was not said.</param>
/// <param name="System">Units of what comes out; null for those of the sheet with the others beside them.</param>
internal sealed record CalculatorAsk(IReadOnlyDictionary<string, string> Typed, UnitSystem? System)
{
    /// <summary>Where the list of calculators is.</summary>
    public const string Root = "calculators";

    private const string Units = "in";

    /// <summary>Where a calculator is, without values.</summary>
    public static string AddressOf(CalculatorSheet sheet) => $"{Root}/{Slug(sheet.Name)}";

    /// <summary>The calculator with this part of an address, or null.</summary>
    public static CalculatorSheet? Find(string slug) => CalculatorLibrary.All.FirstOrDefault(s => Slug(s.Name) == slug);

    /// <summary>Reads an address; names that the calculator does not know are left alone.</summary>
    public static CalculatorAsk Of(CalculatorSheet sheet, Uri address)
    {
        Dictionary<string, StringValues> query = QueryHelpers.ParseQuery(address.Query);
        Dictionary<string, string> typed = sheet.Inputs.Where(i => query.ContainsKey(Slug(i.Name))).ToDictionary(i => i.Name, i => query[Slug(i.Name)].ToString(), StringComparer.Ordinal);
        return new(typed, Enum.TryParse(query.GetValueOrDefault(Units).ToString(), ignoreCase: true, out UnitSystem system) && Enum.IsDefined(system) ? system : null);
    }

    /// <summary>The address with these values, in the order of the inputs.</summary>
    public string Address(CalculatorSheet sheet)
    {
        IEnumerable<KeyValuePair<string, string?>> values = sheet.Inputs.Where(i => Typed.ContainsKey(i.Name)).Select(i => KeyValuePair.Create(Slug(i.Name), (string?)Typed[i.Name]));
        return QueryHelpers.AddQueryString(AddressOf(sheet), System is { } system ? values.Append(new(Units, system.ToString().ToLowerInvariant())) : values);
    }

    private static string Slug(string name) => name.Replace(' ', '-');
}
