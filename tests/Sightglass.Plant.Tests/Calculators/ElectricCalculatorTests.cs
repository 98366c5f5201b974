using CsCheck;
using Sightglass.Plant.Calculators.Electric;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Expected values computed independently from the formulas named beside each.</summary>
public sealed class ElectricCalculatorTests
{
    private const double Phase480 = 277.12812921102037;

    /// <summary>IEEE Std 141, ch. 3 (from memory): 0.054 + j0.052 Ω/kft, 400 ft, 200 A at 0.85.</summary>
    [Fact]
    public void A3_01_FeederDrop_AtAKnownCurrent_ExactAndApproximate()
    {
        double volts = FeederDrop.ReceivingVolts(Phase480, 200, 0.4 * 0.054, 0.4 * 0.052, 0.85) * Math.Sqrt(3);
        Assert.Equal(469.83930, volts, 1e-5);
        Assert.Equal(10.160698, 480 - volts, 1e-6);
        Assert.Equal(10.155734, FeederDrop.VoltsAlong(200, 0.4 * 0.054, 0.4 * 0.052, 0.85) * Math.Sqrt(3), 1e-6);
        Assert.Equal(2592, FeederDrop.LossWatts(200, 0.4 * 0.054), 1e-9);
    }

    /// <summary>Kersting, Distribution System Modeling and Analysis, ch. 3 (from memory).</summary>
    [Fact]
    public void A3_02_EqualTaps_AlongAFeeder_SharesDropAndLoss()
    {
        Assert.Equal([1, 0.75, 0.5625], new[] { 1, 2, 8 }.Select(EqualTaps.DropShare));
        Assert.Equal([1, 0.625, 0.3984375], new[] { 1, 2, 8 }.Select(EqualTaps.LossShare));
        Assert.Equal(3.3213524, EqualTaps.DropShare(8) * FeederDrop.VoltsAlong(300, 0.012, 0.018, 0.85), 1e-7);
        Assert.Equal(1290.9375, EqualTaps.LossShare(8) * FeederDrop.LossWatts(300, 0.012), 1e-9);
    }

    /// <summary>P-V curve (any text of power flow): R 0.02, X 0.015 Ω, 40 kW and 30 kvar a phase.</summary>
    [Fact]
    public void A3_03_ConstantPower_BehindAnImpedance_RootsAndTheMost()
    {
        (double upper, double lower) = PowerLimit.Volts(Phase480, 0.02, 0.015, 40_000, 30_000)!.Value;
        Assert.Equal(272.54168, upper, 1e-5);
        Assert.Equal(4.5864545, lower, 1e-7);
        Assert.Equal(183.45818, 50_000 / upper, 1e-5);
        Assert.Equal(768_000, PowerLimit.MostVoltAmperes(Phase480, 0.02, 0.015, 0.8), 1e-6);
        Assert.Null(PowerLimit.Volts(Phase480, 0.02, 0.015, 0.8 * 768_001, 0.6 * 768_001));
        Assert.NotNull(PowerLimit.Volts(Phase480, 0.02, 0.015, 0.8 * 767_999, 0.6 * 767_999));
    }

    /// <summary>National Electrical Code, chapter 9, table 9 (values and formula read), effective impedance at 0.85.</summary>
    [Theory]
    [InlineData("4/0", 0.080415917, 0.074298090)]
    [InlineData("250", 0.073292700, 0.065798090)]
    [InlineData("350", 0.059489134, 0.053371308)]
    [InlineData("500", 0.049935569, 0.043494525)]
    public void A3_06_CableSize_OfTheCode_HasTheEffectiveImpedanceOfTheFormula(string name, double steel, double plastic)
    {
        CableSize size = CableSize.All.Single(s => s.Name == name);
        Assert.Equal(steel, CableSize.Effective(size.OhmsSteel, size.ReactanceSteel, 0.85), 1e-9);
        Assert.Equal(plastic, CableSize.Effective(size.OhmsPlastic, size.ReactancePlastic, 0.85), 1e-9);
    }

    /// <summary>The printed column of the same table, Ω to neutral per 1,000 ft at 0.85: plastic 0.078…0.048, aluminium 0.080…0.050 (read). It differs from the formula by up to 10 %.</summary>
    [Fact]
    public void A3_06_CableSize_OfTheCode_IsWithinATenthOfThePrintedColumn()
    {
        double[] plastic = [0.078, 0.070, 0.058, 0.048], aluminium = [0.080, 0.073, 0.060, 0.050];
        Assert.Equal(plastic, CableSize.All.Select(s => CableSize.Effective(s.OhmsPlastic, s.ReactancePlastic, 0.85)), (p, v) => Math.Abs(p - v) <= 0.1 * p);
        Assert.Equal(aluminium, CableSize.All.Select(s => CableSize.Effective(s.OhmsAluminium, s.ReactancePlastic, 0.85)), (p, v) => Math.Abs(p - v) <= 0.1 * p);
        Assert.Equal(0.26383175, CableSize.PerKilometre(0.080415917), 1e-8);
    }

    /// <summary>National Electrical Code, table 310.16 (read) and its correction for the air (from memory); the table prints 0.88 at 40 °C for 75 °C.</summary>
    [Fact]
    public void A3_07_Ampacity_InWarmerAir_IsTheTablesTimesTheFactor()
    {
        Assert.Equal(0.88191710, CableSize.AmbientFactor(75, 40), 1e-8);
        Assert.Equal(0.74535599, CableSize.AmbientFactor(75, 50), 1e-8);
        Assert.Equal(0.91287093, CableSize.AmbientFactor(90, 40), 1e-8);
        Assert.Equal(0.81649658, CableSize.AmbientFactor(90, 50), 1e-8);
        Assert.Equal(202.84093, CableSize.All[0].Amperes75 * CableSize.AmbientFactor(75, 40), 1e-5);
        Assert.Equal(0, CableSize.AmbientFactor(75, 80));
        Assert.Equal([230, 255, 310, 380], CableSize.All.Select(s => s.Amperes75));
        Assert.Equal([260, 290, 350, 430], CableSize.All.Select(s => s.Amperes90));
    }

    /// <summary>Any text: 400 kW at 480 V from 0.75 to 0.95.</summary>
    [Fact]
    public void A3_08_PowerFactor_Raised_SavesCurrent()
    {
        Assert.Equal(352.76684e3, PowerFactor.Vars(400e3, 0.75), 1e-2);
        Assert.Equal(131.47364e3, PowerFactor.Vars(400e3, 0.95), 1e-2);
        Assert.Equal(221.29320e3, PowerFactor.CapacitorVars(400e3, 0.75, 0.95), 1e-2);
        Assert.Equal(641.50030, PowerFactor.Amperes(PowerFactor.VoltAmperes(400e3, 0.75), 480), 1e-5);
        Assert.Equal(506.44761, PowerFactor.Amperes(PowerFactor.VoltAmperes(400e3, 0.95), 480), 1e-5);
    }

    /// <summary>Peukert's law, both forms (read in stored pages): 100 Ah at 20 h, k 1.2.</summary>
    [Fact]
    public void A3_09_Peukert_BothForms_HaveTheirTimes()
    {
        const double Hour = 3600;
        double seconds = Peukert.Seconds(100 * Hour, 20 * Hour, 10, 1.2);
        Assert.Equal(8.7055056, seconds / Hour, 1e-7);
        Assert.Equal(87.055056, 10 * seconds / Hour, 1e-6);
        Assert.Equal(14.495593, Peukert.SecondsByOneAmpere(100 * Hour, 5, 1.2) / Hour, 1e-6);
        Assert.Equal(20, Peukert.Seconds(100 * Hour, 20 * Hour, 5, 1.2) / Hour, 1e-12);
    }

    /// <summary>Network theory: 64 V behind 0.030 Ω.</summary>
    [Fact]
    public void A3_10_LeadAcid_BehindItsResistance_SagsByOhmsLaw()
    {
        double amperes = LeadAcid.Amperes(64, 0.030, 0.050);
        Assert.Equal(800, amperes, 1e-10);
        Assert.Equal(40, LeadAcid.Volts(64, 0.030, amperes), 1e-12);
        Assert.Equal(34_133.333, PowerLimit.MostWatts(64, 0.030), 1e-3);
    }

    /// <summary>Trade case 17: 64 V at rest, 30 mΩ, 900 A: 37 V. 32 cells of 1.265 by the rule for rest (from memory) show 67.4 V.</summary>
    [Fact]
    public void LeadAcid_Cranking_FallsToTheTradeCasesVoltage()
    {
        Assert.Equal(37, LeadAcid.Volts(64, 0.030, 900), 1e-12);
        Assert.Equal(67.36, 32 * LeadAcid.RestVolts(1.265), 1e-9);
    }

    /// <summary>Manwell and McGowan 1993 (from memory): a great current empties what is at hand long before all is drawn, a small one draws nearly all; the charge it gets out never grows with the current.</summary>
    [Fact]
    public void KineticBattery_AtMoreCurrent_GivesLess() =>
        Gen.Select(Gen.Double[0.1, 0.9], Gen.Double[0.1, 10], Gen.Double[1, 500], Gen.Double[1.01, 3]).Holds(x =>
        {
            (double share, double perHour, double amperes, double more) = x;
            const double Charge = 1.44e6;
            double Drawn(double i) => i * KineticBattery.Seconds(Charge, share, perHour / 3600, i);
            Assert.InRange(Drawn(amperes), share * Charge * (1 - 1e-9), Charge);
            Assert.True(Drawn(more * amperes) <= Drawn(amperes) * (1 + 1e-9));
            double t = KineticBattery.Seconds(Charge, share, perHour / 3600, amperes);
            Assert.Equal(0, KineticBattery.AtHand(Charge, share, perHour / 3600, amperes, t), 1e-6 * Charge);
        });

    [Fact]
    public void KineticBattery_WithoutACurrent_LastsForEver() => Assert.Equal(double.PositiveInfinity, KineticBattery.Seconds(1e6, 0.3, 1e-3, 0));

    /// <summary>Any text of power systems: 3 % droop at full load of 60 Hz is 58.2 Hz; two equal sets share equally, one with twice the droop takes a third.</summary>
    [Fact]
    public void Droop_OfASet_LowersFrequencyAndSharesLoad()
    {
        Assert.Equal(58.2, Droop.Hertz(60, 0.03, 500e3, 500e3), 1e-12);
        Assert.Equal(0.5, Droop.ShareOfFirst(500e3, 0.03, 500e3, 0.03), 1e-12);
        Assert.Equal(1.0 / 3, Droop.ShareOfFirst(500e3, 0.06, 500e3, 0.03), 1e-12);
    }

    /// <summary>Temperature coefficient of copper at 20 °C, 0.00393/K (any handbook): 234.5 makes the same of it within half a per cent.</summary>
    [Fact]
    public void CableSize_Hotter_HasTheHandbooksResistance() =>
        Assert.Equal(1 + (0.00393 * 70), CableSize.HeatFactor(90) / CableSize.HeatFactor(20), 0.005);
}
