using System.Collections.Frozen;

namespace Sightglass.Basics.Quantities;

/// <summary>
/// Every unit that may be written, found by its symbol. Symbols not in the table are composed where they can be:
/// <c>psi/min</c>, <c>MJ/kg</c>, <c>N·m</c>, <c>1/K</c>.
/// </summary>
public static class UnitTable
{
    private const int MaxParts = 4;

    private static readonly Unit[] s_units = UnitList.All();

    private static readonly FrozenDictionary<string, Unit> s_bySymbol = BySymbol();

    /// <summary>The plain number.</summary>
    public static Unit One { get; } = Get("1");

    /// <summary>Every symbol as it is best written, in the order of the table; other spellings (<c>m²</c>, <c>gpm</c>) are found too.</summary>
    public static IEnumerable<string> Symbols => s_units.Select(u => u.Symbol);

    /// <summary>Every unit of the table.</summary>
    public static IReadOnlyList<Unit> Units => s_units;

    /// <summary>Symbols of one dimension, in the order of the table.</summary>
    public static IEnumerable<string> SymbolsOf(Dimension dimension) => s_units.Where(u => u.Dimension == dimension).Select(u => u.Symbol);

    /// <summary>Every way to write a unit of one dimension without composing, in ordinal order.</summary>
    public static IEnumerable<string> SpellingsOf(Dimension dimension) =>
        s_bySymbol.Where(p => p.Value.Dimension == dimension).Select(p => p.Key).Order(StringComparer.Ordinal);

    /// <summary>The unit with this symbol (case counts, spaces inside count as one), or null.</summary>
    public static Unit? Find(string symbol)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        return s_bySymbol.TryGetValue(symbol, out Unit? unit) ? unit : symbol.Length <= 40 ? Compose(symbol) : null;
    }

    /// <summary>The unit with this symbol; for symbols written in code.</summary>
    /// <exception cref="ArgumentException">No such unit.</exception>
    public static Unit Get(string symbol) => Find(symbol) ?? throw new ArgumentException($"No unit `{symbol}`.", nameof(symbol));

    /// <summary>The coherent SI unit of a dimension: <c>Pa</c>, <c>m^3/s</c>, or a product of base units.</summary>
    public static Unit SiOf(Dimension dimension) =>
        Array.Find(s_units, u => u.Dimension == dimension && u.Factor == 1 && u.Offset == 0) ?? new(dimension.ToString(), dimension, 1);

    /// <summary>A symbol of the table itself or another spelling of it, not composed.</summary>
    internal static bool IsListed(string symbol) => s_bySymbol.ContainsKey(symbol);

    private static FrozenDictionary<string, Unit> BySymbol()
    {
        Dictionary<string, Unit> found = s_units.ToDictionary(u => u.Symbol, StringComparer.Ordinal);
        foreach ((string other, string symbol) in UnitList.Spellings)
        {
            found.Add(other, found[symbol]);
        }

        foreach (Unit unit in s_units.Where(u => u.Symbol.Contains('^', StringComparison.Ordinal)))
        {
            found.TryAdd(Raised(unit.Symbol), unit);
        }

        return found.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>The symbol with raised digits: <c>m²</c>.</summary>
    internal static string Raised(string symbol) =>
        symbol.Replace("^2", "²", StringComparison.Ordinal).Replace("^3", "³", StringComparison.Ordinal);

    private static Unit? Compose(string symbol)
    {
        Dimension dimension = Dimension.One;
        double factor = 1;
        int parts = 0;
        int start = 0;
        bool divide = false;
        for (int i = 0; i <= symbol.Length; i++)
        {
            if (i < symbol.Length && symbol[i] is not ('/' or '·'))
            {
                continue;
            }

            if (++parts > MaxParts || !s_bySymbol.TryGetValue(symbol[start..i], out Unit? part) || part.IsScale || part.IsAbsolute)
            {
                return null;
            }

            dimension = divide ? dimension / part.Dimension : dimension * part.Dimension;
            factor = divide ? factor / part.Factor : factor * part.Factor;
            divide = i < symbol.Length && symbol[i] == '/';
            start = i + 1;
        }

        return new(symbol, dimension, factor);
    }
}
