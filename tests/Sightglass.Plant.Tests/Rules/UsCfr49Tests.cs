using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Rules;
using Sightglass.Plant.Rules;

namespace Sightglass.Plant.Tests.Rules;

/// <summary>
/// The brake and securement rows of rules/us-cfr49. Source of every number here: US Code of Federal Regulations, Title 49, 2015 annual edition, the paragraph named. The IDs are
/// those of tests/checks.txt.
/// </summary>
public sealed class UsCfr49Tests
{
    private static readonly Lazy<RuleSet> s_rules = new(() =>
    {
        DiagnosticList found = [];
        return RuleReader.Read(Path.Combine(Root(), "rules", "us-cfr49"), found) ?? throw new InvalidOperationException(string.Join('\n', found));
    });

    /// <summary>229.31(a): at least 25 % above the greatest working pressure.</summary>
    [Fact]
    public void CFR036_MainReservoirProof() => Limit("229.31(a)", "main reservoir proof pressure", "175 psi", "174.9 psi", "main reservoir working pressure: 140 psi");

    /// <summary>229.31(c): telltale holes not more than 12 in apart both ways.</summary>
    [Fact]
    public void CFR038_TelltaleSpacing() => Limit("229.31(c), spacing", "telltale hole spacing", "12 in", "12.01 in");

    /// <summary>229.31(c): D = 0.6PR/(S − 0.6P), S a fifth of the tensile strength: 0.6·140·15/(11,000 − 84) = 0.11543 in; but never under 1/16 in.</summary>
    [Fact]
    public void CFR039_TelltaleDepth()
    {
        const string Of = "main reservoir working pressure: 140 psi\n  main reservoir inside radius: 15 in\n  main reservoir tensile strength: 55000 psi";
        Limit("229.31(c), depth", "telltale hole depth", "0.11543 in", "0.11542 in", Of);
        Limit("229.31(c), depth", "telltale hole depth", "1/16 in", "0.0624 in", Of.Replace("15 in", "1 in", StringComparison.Ordinal));
    }

    /// <summary>229.31(d): at least twice the greatest working pressure, and not less than 250 psi.</summary>
    [Fact]
    public void CFR040_AluminumReservoirProof()
    {
        Limit("229.31(d)", "aluminum main reservoir proof pressure", "280 psi", "279.9 psi", "main reservoir working pressure: 140 psi");
        Limit("229.31(d)", "aluminum main reservoir proof pressure", "250 psi", "249.9 psi", "main reservoir working pressure: 100 psi");
    }

    /// <summary>229.49(a)(1): not more than 15 psi above the greatest working pressure.</summary>
    [Fact]
    public void CFR044_SafetyValve() => Limit("229.49(a)(1)", "main reservoir safety valve setting", "155 psi", "155.1 psi", "main reservoir working pressure: 140 psi");

    /// <summary>229.49(a)(2): not less than three complete operating cycles.</summary>
    [Fact]
    public void CFR045_ControlAirReservoir() => Limit("229.49(a)(2)", "control air operating cycles", "3", "2");

    /// <summary>229.49(b): within 5 psi above or below the greatest working pressure.</summary>
    [Fact]
    public void CFR046_Governor()
    {
        Limit("229.49(b)", "governor cut-out", "145 psi", "145.1 psi", "main reservoir working pressure: 140 psi");
        Limit("229.49(b)", "governor cut-out", "135 psi", "134.9 psi", "main reservoir working pressure: 140 psi");
    }

    /// <summary>229.49(c): starts at not less than 15 psi above the greatest brake pipe pressure.</summary>
    [Fact]
    public void CFR047_GovernorStart() => Limit("229.49(c), start", "governor cut-in", "125 psi", "124.9 psi", "greatest brake pipe pressure: 110 psi");

    /// <summary>229.49(c): does not stop until the reservoir has risen at least 10 psi.</summary>
    [Fact]
    public void CFR048_GovernorStop() => Limit("229.49(c), stop", "governor cut-out", "140 psi", "139.9 psi", "governor cut-in: 130 psi");

    /// <summary>229.53: 5 % or 3 psi, whichever is less. The base of the 5 % is a reading of ours: 5 % of 50 psi are 2.5 psi.</summary>
    [Fact]
    public void CFR049_BrakeGauges()
    {
        Limit("229.53", "brake gauge error", "3 psi", "3.1 psi", "greatest brake pipe pressure: 110 psi");
        Limit("229.53", "brake gauge error", "2.5 psi", "2.6 psi", "greatest brake pipe pressure: 50 psi");
    }

    /// <summary>229.55(b): not more than the total possible travel less 1 1/2 in.</summary>
    [Fact]
    public void CFR050_PistonTravel() => Limit("229.55(b)", "piston travel", "8 1/2 in", "8.6 in", "total piston travel: 10 in");

    /// <summary>229.55(c): at least 30 psi.</summary>
    [Fact]
    public void CFR051_CylinderPressure() => Limit("229.55(c)", "brake cylinder pressure", "30 psi", "29.9 psi");

    /// <summary>
    /// 229.59(a): an average of 3 psi a minute for 3 minutes, after the pressure has been reduced to 60 % of the greatest. What leaked before, and what leaks below, does not count.
    /// </summary>
    [Fact]
    public void CFR053_MainReservoirLeakage()
    {
        const string Of = "main reservoir working pressure: 140 psi\n  main reservoir pressure: grade * 1 psi\n  main reservoir is fed: cant > 0";
        Assert.Equal(RuleVerdict.Kept, Run("229.59(a)", Of, t => (t < 56 ? 140 - t : 83.9 - (3.0 / 60 * (t - 56)), 0)).Verdict);
        RuleFinding leaks = Run("229.59(a)", Of, t => (t < 56 ? 140 - t : 83.9 - (3.1 / 60 * (t - 56)), 0));
        Assert.Equal(RuleVerdict.NotKept, leaks.Verdict);
        Assert.Equal(3.1, leaks.Row.Unit.FromSi(leaks.Value!.Value), 1e-6);
        Assert.Equal(RuleVerdict.CannotBeTold, Run("229.59(a)", Of, t => (83.9 - (t / 60), t % 60 < 1 ? 1 : 0)).Verdict);
        Assert.Equal(RuleVerdict.CannotBeTold, Run("229.59(a)", Of, t => (50 - (t / 60), 0)).Verdict);
    }

    /// <summary>229.59(b): not more than 5 psi a minute.</summary>
    [Fact]
    public void CFR054_BrakePipeLeakage() => Fall("229.59(b)", "brake pipe pressure", "brake pipe is fed", 5);

    /// <summary>229.59(c): the brakes stay applied at least 5 minutes with the way to the cylinders closed. Below 5 psi they count as released (ours).</summary>
    [Fact]
    public void CFR055_CylindersHold()
    {
        const string Of = "least brake cylinder pressure now: grade * 1 psi\n  brake cylinders are fed: cant > 0\n  brakes are applied in full: grade > 40";
        Assert.Equal(RuleVerdict.Kept, Run("229.59(c)", Of, t => (50 - (t / 60 * 9), 0)).Verdict);
        Assert.Equal(RuleVerdict.NotKept, Run("229.59(c)", Of, t => (50 - (t / 60 * 9.1), 0)).Verdict);
    }

    /// <summary>229.59(d): an average of not more than 3 psi a minute for 3 minutes.</summary>
    [Fact]
    public void CFR056_ControlAirLeakage() => Fall("229.59(d)", "control air pressure", "control air is fed", 3);

    /// <summary>238.231(m): up to two cars in direct release at the rear of a train in graduated release. Which cars those are is the train's measure; it is held at every moment.</summary>
    [Fact]
    public void CFR158_MixedRelease()
    {
        const string Of = "direct release is only at the rear: grade > 40";
        Assert.Equal(RuleVerdict.CannotBeTold, Book("238.231(m)", Of).Verdict);
        Assert.Equal(RuleVerdict.Kept, Run("238.231(m)", Of, _ => (41, 0)).Verdict);
        RuleFinding mixed = Run("238.231(m)", Of, t => (t is < 300 or > 310 ? 41 : 39, 0));
        Assert.Equal((RuleVerdict.NotKept, "As it stood at 0:05:00."), (mixed.Verdict, mixed.Why));
    }

    /// <summary>238.313(g): operating pressure, not less than 90 psi.</summary>
    [Fact]
    public void CFR179_ClassITestPressure() => Limit("238.313(g)", "brake pipe pressure of a class I test", "90 psi", "89.9 psi");

    /// <summary>238.313(g)(3): 7 to 9 in.</summary>
    [Fact]
    public void CFR180_PassengerPistonTravel()
    {
        Limit("238.313(g)(3)", "piston travel of a passenger car", "9 in", "9.1 in");
        Limit("238.313(g)(3)", "piston travel of a passenger car", "7 in", "6.9 in");
    }

    /// <summary>238.313(g)(7): not more than 5 psi a minute.</summary>
    [Fact]
    public void CFR181_ClassILeakage() => Fall("238.313(g)(7)", "brake pipe pressure", "brake pipe is fed", 5);

    /// <summary>238.315(f)(1): not more than 5 psi a minute.</summary>
    [Fact]
    public void CFR185_ClassIALeakage() => Fall("238.315(f)(1)", "brake pipe pressure", "brake pipe is fed", 5);

    /// <summary>232.103(f): more than 10 1/2 in counts as not working.</summary>
    [Fact]
    public void CFR192_LongStroke() => Limit("232.103(f)", "piston travel of a long stroke", "10 1/2 in", "10.6 in");

    /// <summary>232.205(c)(1): 5 psi a minute after a reduction of 20 psi and a wait of 45 to 60 s: what falls while it settles does not count.</summary>
    [Fact]
    public void CFR201_LeakageMethod()
    {
        const string Of = "greatest brake pipe pressure: 110 psi\n  brake pipe pressure: grade * 1 psi\n  brake pipe is fed: cant > 0";
        Assert.Equal(RuleVerdict.Kept, Run("232.205(c)(1), leakage", Of, t => (t < 60 ? 90 - (t / 60 * 8) : 82 - ((t - 60) / 60 * 4.9), 0)).Verdict);
        Assert.Equal(RuleVerdict.NotKept, Run("232.205(c)(1), leakage", Of, t => (90 - (t / 60 * 5.1), 0)).Verdict);
        Assert.Equal(RuleVerdict.CannotBeTold, Run("232.205(c)(1), leakage", Of, t => (95 - (t / 60 * 0.1), 0)).Verdict);
    }

    /// <summary>232.205(c)(5): 6 to 9 in.</summary>
    [Fact]
    public void CFR203_FreightPistonTravel()
    {
        Limit("232.205(c)(5)", "piston travel of a freight car", "9 in", "9.1 in");
        Limit("232.205(c)(5)", "piston travel of a freight car", "6 in", "5.9 in");
    }

    /// <summary>Rows in words: each is there under its paragraph with the number of the edition.</summary>
    [Theory]
    [InlineData("CFR030", "229.29(b)", "92 days")]
    [InlineData("CFR031", "229.29(d)", "368 days")]
    [InlineData("CFR032", "229.29(e)", "368 days", "736 days")]
    [InlineData("CFR033", "229.29(f)(1)", "1,104 days")]
    [InlineData("CFR034", "229.29(f)(2)", "1,472 days")]
    [InlineData("CFR035", "229.29(f)(3)", "1,840 days")]
    [InlineData("CFR037", "229.31(b)", "736 days")]
    [InlineData("CFR041", "229.46(a)", "drained")]
    [InlineData("CFR042", "229.46(b)", "tagged")]
    [InlineData("CFR043", "229.47(a)", "other than the engineer", "Emergency Brake Valve")]
    [InlineData("CFR052", "229.57", "30 %")]
    [InlineData("CFR140", "238.15(b)(2)(ii)", "15 mph", "without passengers")]
    [InlineData("CFR141", "238.15(d)(1)(i)", "all axles")]
    [InlineData("CFR142", "238.15(d)(1)(ii)", "all tread brake units")]
    [InlineData("CFR143", "238.15(d)(1)(iii)", "two")]
    [InlineData("CFR144", "238.15(d)(2)", "20 mph")]
    [InlineData("CFR145", "238.15(d)(3)(i)", "40 mph", "half")]
    [InlineData("CFR146", "238.15(d)(3)(ii)", "no speed")]
    [InlineData("CFR147", "238.15(d)(4)", "238.19(d)")]
    [InlineData("CFR148", "238.15(e)", "hand brake")]
    [InlineData("CFR154", "238.231(a)", "spacing of the signals")]
    [InlineData("CFR155", "238.231(h)(3)", "368 days")]
    [InlineData("CFR156", "238.231(h)(4)", "at least one hand brake")]
    [InlineData("CFR157", "238.231(l)", "10 °F")]
    [InlineData("CFR158", "238.231(m)", "two cars")]
    [InlineData("CFR168", "238.307(d)", "368 days")]
    [InlineData("CFR173", "238.309(d)", "2,208", "1,476", "1,104")]
    [InlineData("CFR174", "238.309(b),(e)", "736", "1,104", "1,840")]
    [InlineData("CFR175", "238.313(a)", "each calendar day")]
    [InlineData("CFR176", "238.313(b)(2)", "1,500 miles")]
    [InlineData("CFR177", "238.313(c)", "4 hours")]
    [InlineData("CFR178", "238.313(f)", "100 %")]
    [InlineData("CFR182", "238.313(j)", "5 days")]
    [InlineData("CFR183", "238.315(a)(1)", "12 hours", "4 hours")]
    [InlineData("CFR184", "238.315(a)(2)", "4 hours")]
    [InlineData("CFR186", "238.317(a)", "control stand")]
    [InlineData("CFR187", "238.319", "as it is safe")]
    [InlineData("CFR190", "232.103(d)", "100 %")]
    [InlineData("CFR191", "232.103(e)", "85 %")]
    [InlineData("CFR193", "232.103(n)(1)-(3)", "one hand brake", "service rate", "angle cock")]
    [InlineData("CFR194", "232.103(n)(6)", "one loaded", "20 loaded")]
    [InlineData("CFR195", "232.107(a)", "twice", "five months", "one year")]
    [InlineData("CFR196", "232.107(e)", "10 °F", "−12.2 °C")]
    [InlineData("CFR197", "232.109(b)", "30 calendar days")]
    [InlineData("CFR198", "232.109(d)", "92 days")]
    [InlineData("CFR199", "232.109(j)(2)", "5 mph")]
    [InlineData("CFR200", "232.205(c)(1), leakage", "5 psi", "60 cubic feet")]
    [InlineData("CFR202", "232.205(c)(1)(iii)", "92 days", "20 °F", "3 cubic feet")]
    [InlineData("CFR205", "232.205(c)(8)", "10 mph")]
    public void Words_OfARow_HoldTheNumberOfTheEdition(string id, string paragraph, params string[] words)
    {
        RuleRow row = Row(paragraph);
        Assert.Equal("2015 annual edition", row.Edition);
        Assert.All(words, w => Assert.True($"{row.Limit} {row.Condition}".Contains(w, StringComparison.Ordinal), $"{id}: {w} in: {row.Limit}"));
    }

    /// <summary>Only what was read is built upon: every row names its edition and how sure it is.</summary>
    [Fact]
    public void Rows_OfTheSet_AreAllOfTheListAndNoOthers() => Assert.Equal(72, s_rules.Value.Rows.Length);

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    private static RuleRow Row(string paragraph) => s_rules.Value.Rows.Single(r => r.Paragraph == paragraph);

    /// <summary>A value at the limit is kept, one just beyond is not, and without it nothing can be told.</summary>
    private static void Limit(string paragraph, string quantity, string at, string beyond, string others = "")
    {
        Assert.Equal(RuleVerdict.Kept, Book(paragraph, $"{quantity}: {at}", others).Verdict);
        Assert.Equal(RuleVerdict.NotKept, Book(paragraph, $"{quantity}: {beyond}", others).Verdict);
        Assert.Equal(RuleVerdict.CannotBeTold, Book(paragraph, "", others).Verdict);
    }

    private static RuleFinding Book(string paragraph, params string[] measures) => RuleCheck.Of(Bind(measures)).Single(f => f.Row.Paragraph == paragraph);

    /// <summary>A fall just within the limit is kept, one just beyond is not, a test that is fed on the way does not count.</summary>
    private static void Fall(string paragraph, string pressure, string fed, double limit)
    {
        string of = $"{pressure}: grade * 1 psi\n  {fed}: cant > 0";
        Assert.Equal(RuleVerdict.Kept, Run(paragraph, of, t => (110 - (t / 60 * limit), 0)).Verdict);
        Assert.Equal(RuleVerdict.NotKept, Run(paragraph, of, t => (110 - (t / 60 * (limit + 0.1)), 0)).Verdict);
        Assert.Equal(RuleVerdict.CannotBeTold, Run(paragraph, of, t => (110 - (t / 60 * limit), t % 30 < 1 ? 1 : 0)).Verdict);
    }

    /// <summary>Ten minutes of a run given as a curve: the pressure in psi stands as the grade, and something is fed where the cant is above zero.</summary>
    private static RuleFinding Run(string paragraph, string measures, Func<double, (double Psi, double Fed)> curve)
    {
        RuleTrace trace = new(Bind(measures));
        for (int t = 0; t <= 600; t++)
        {
            (double psi, double fed) = curve(t);
            trace.Take(Basics.Time.SimTime.FromSeconds(t), m => m.Written.Formula switch
            {
                "grade * 1 psi" => psi * 6894.757293168361,
                "cant > 0" => fed - 0.5,
                _ => psi - 40,
            });
        }

        return trace.Judge().Single(f => f.Row.Paragraph == paragraph);
    }

    private static RuleBinding Bind(params string[] measures)
    {
        DiagnosticList found = [];
        RuleBinding binding = RuleBinding.Of(s_rules.Value, Plants.Compile($"measures:\n  {string.Join("\n  ", measures)}\n"), found);
        Assert.Empty(found);
        return binding;
    }
}
