using Sightglass.Basics.Language;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>The words of calculators are data, so that no reader of the program finds them: here each is held against the language's files.</summary>
public sealed class CalculatorWordTests
{
    public static TheoryData<string> Names => [.. CalculatorLibrary.All.Select(c => c.Name)];

    private static IEnumerable<string> Words => CalculatorLibrary.All.SelectMany(s => s.Texts).Concat(CalculatorLibrary.Groups.Select(g => g.Name)).Distinct().Order(StringComparer.Ordinal);

    [Fact]
    public void Words_OfEverySheet_HaveSpanish()
    {
        string missing = string.Join('\n', Words.Where(w => !Tongue.Spanish.Words.ContainsKey(CalculatorWord.Key + w)));
        Assert.True(missing.Length == 0, missing);
    }

    [Fact]
    public void Spanish_OfWhatNoSheetSays_IsNotKept()
    {
        HashSet<string> words = [.. Words.Select(w => CalculatorWord.Key + w)];
        string stale = string.Join('\n', Tongue.Spanish.Words.Keys.Where(k => k.StartsWith(CalculatorWord.Key, StringComparison.Ordinal) && !words.Contains(k)));
        Assert.True(stale.Length == 0, stale);
    }

    /// <summary>In Spanish as in English: the formula speaks of the values by their names, so that they can be put in.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Formula_InSpanish_HoldsTheNamesAndTakesTheValues(string name)
    {
        CalculatorSheet sheet = CalculatorLibrary.Find(name)!;
        Dictionary<string, string> given = sheet.Inputs.ToDictionary(i => i.Name, i => i.Example);
        using (Tongue.Spanish.Speak())
        {
            string formula = CalculatorWord.Of(sheet.Formula);
            Assert.All(sheet.Inputs, i => Assert.Contains(CalculatorWord.Of(i.Name), formula, StringComparison.Ordinal));
            string[] names = [.. sheet.Inputs.Concat(sheet.Results).Select(v => CalculatorWord.Of(v.Name))];
            Assert.Equal(names.Distinct(), names);
            string worked = string.Join("; ", Calculation.Of(sheet, given, [])!.Worked().Select(l => string.Concat(l.Select(p => p.Text))));
            Assert.All(sheet.Inputs, i => Assert.Contains(CalculatorWord.Of(i.Example), worked, StringComparison.Ordinal));
            Assert.Same(sheet, CalculatorLibrary.Find(CalculatorWord.Of(name)));
            Assert.NotNull(Calculation.Of(sheet, sheet.Inputs.ToDictionary(i => CalculatorWord.Of(i.Name), i => CalculatorWord.Of(i.Example)), []));
        }
    }

    [Fact]
    public void Of_RefusedInSpanish_IsToldInSpanish()
    {
        List<CalculatorRefusal> refused = [];
        using (Tongue.Spanish.Speak())
        {
            Assert.Null(Calculation.Of(CalculatorLibrary.Find("stopping")!, new Dictionary<string, string> { ["velocidad"] = "79" }, refused));
        }

        Assert.Equal("«velocidad»: «79» no tiene unidad. Escriba una detrás: m/s, km/h, mph, ft/s.", refused.First().Sentence);
    }
}
