using CsCheck;
using Sightglass.Network.Laws.Motion;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Expected values computed independently from the formulas named beside each.</summary>
public sealed class RunningCalculatorTests
{
    private const double Pound = 4.4482216152605;
    private const double ShortTon = 907.18474;
    private const double Mph = 0.44704;
    private const double Horsepower = 745.69987158227022;

    /// <summary>Davis 1926 (Hay, from memory; freight partly read) and the Canadian form (from memory; its C and a are inputs).</summary>
    [Fact]
    public void A4_01_Resistance_Of1926AndTheCanadianForm_InPoundsPerTon()
    {
        Assert.Equal(7.4813333, ResistanceForm.Passenger1926.PoundsPerTon(15, 4, 60, 120), 1e-7);
        Assert.Equal(448.88, ResistanceForm.Passenger1926.Pounds(15, 4, 60, 120), 1e-9);
        Assert.Equal(11.967692, ResistanceForm.Locomotive1926.PoundsPerTon(32.5, 4, 60, 120), 1e-6);
        Assert.Equal(1555.8, ResistanceForm.Locomotive1926.Pounds(32.5, 4, 60, 120), 1e-9);
        Assert.Equal(4.94, ResistanceForm.Freight1926.PoundsPerTon(25, 4, 40, 85), 1e-9);
        Assert.Equal(6.81, ResistanceForm.Canadian(3.5).PoundsPerTon(15, 4, 60, 110), 1e-9);
        Assert.Equal(14.487692, ResistanceForm.Canadian(24).PoundsPerTon(32.5, 4, 60, 160), 1e-6);
    }

    /// <summary>AREMA; K read in lecture notes, the polynomial from memory.</summary>
    [Theory]
    [InlineData(0, 1.9333333)]
    [InlineData(30, 3.2833333)]
    [InlineData(60, 6.7333333)]
    [InlineData(79, 10.004500)]
    public void A4_02_Resistance_OfTheModifiedForm_InPoundsPerTon(double milesAnHour, double expected)
    {
        Assert.Equal(expected, ResistanceForm.Modified().PoundsPerTon(15, 4, milesAnHour), 1e-6);
        Assert.Equal(60 * expected, ResistanceForm.Modified().Pounds(15, 4, milesAnHour), 1e-4);
    }

    /// <summary>The sheet that the network's law takes is the same formula in SI.</summary>
    [Fact]
    public void A4_02_Resistance_AsASheetOfTheLaw_IsTheSameForce() =>
        Gen.Select(Gen.Double[5, 35], Gen.Int[2, 6], Gen.Double[1, 100], Gen.Double[50, 160]).Holds(x =>
        {
            (double tonsPerAxle, int axles, double mph, double squareFeet) = x;
            double[] sheet = ResistanceForm.Locomotive1926.Sheet(tonsPerAxle * axles * ShortTon, axles, squareFeet * 0.3048 * 0.3048);
            double pounds = ResistanceForm.Locomotive1926.Pounds(tonsPerAxle, axles, mph, squareFeet);
            Assert.Equal(pounds * Pound, SpeedResistance.Newtons(sheet, mph * Mph), 1e-9 * pounds * Pound);
        });

    /// <summary>20 lb/ton and per cent, 0.8 lb/ton and degree (read in a US Army manual and a posting that cites the AREA); radii by arc and chord.</summary>
    [Theory]
    [InlineData(1, 20, 19.999000)]
    [InlineData(2.2, 44, 43.989356)]
    [InlineData(3, 60, 59.973018)]
    public void A4_03_Grade_ByTheRuleAndExactly_InPoundsPerTon(double percent, double rule, double exact)
    {
        Assert.Equal(rule, TrackResistance.PoundsPerTon(percent, 0), 1e-9);
        Assert.Equal(exact, 2000 * TrackResistance.GradeShare(percent / 100), 1e-6);
    }

    [Theory]
    [InlineData(2, 1.6, 2864.7890, 2864.9344)]
    [InlineData(6, 4.8, 954.92966, 955.36613)]
    [InlineData(10, 8.0, 572.95780, 573.68566)]
    public void A4_03_Curve_ByItsDegrees_ResistanceAndRadii(double degrees, double pounds, double arcFeet, double chordFeet)
    {
        Assert.Equal(pounds, TrackResistance.PoundsPerTon(0, degrees), 1e-9);
        Assert.Equal(pounds, TrackResistance.PoundsPerTon(100 * TrackResistance.GradeOfCurve(degrees), 0), 1e-9);
        Assert.Equal(arcFeet, TrackResistance.RadiusByArc(degrees) / 0.3048, 1e-4);
        Assert.Equal(chordFeet, TrackResistance.RadiusByChord(degrees) / 0.3048, 1e-4);
    }

    /// <summary>The worked example of a US Army manual (TR 0603, read): 598 and 1,196 short tons.</summary>
    [Fact]
    public void A4_04_Tonnage_OfTheManualsExample_IsPrintedThere()
    {
        double drawbar = Tonnage.DrawbarPounds(36_000, 120);
        Assert.Equal(33_600, drawbar);
        double tons = Tonnage.Tons(drawbar, 0.80, 7, 1.5, 10);
        Assert.Equal(597.33333, tons, 1e-5);
        Assert.Equal(598, Tonnage.Printed(tons));
        Assert.Equal(1196, 2 * Tonnage.Printed(tons));
    }

    /// <summary>Hay (from memory); 375 lb·mph a horsepower is exact.</summary>
    [Fact]
    public void A4_05_TractiveEffort_ByPowerAndAdhesion_MeetAtTheCornerSpeed()
    {
        Assert.Equal(24_600, TractiveEffort.PowerNewtons(2000 * Horsepower, 0.82, 25 * Mph) / Pound, 1e-6);
        Assert.Equal(60_000, TractiveEffort.AdhesionNewtons(240_000, 0.25), 1e-9);
        double corner = TractiveEffort.CornerSpeed(2000 * Horsepower, 0.82, 240_000 * Pound, 0.25);
        Assert.Equal(10.25, corner / Mph, 1e-9);
        Assert.Equal(60_000, TractiveEffort.Newtons(2000 * Horsepower, 0.82, 240_000 * Pound, 0.25, 0.5 * corner) / Pound, 1e-6);
        Assert.Equal(30_000, TractiveEffort.Newtons(2000 * Horsepower, 0.82, 240_000 * Pound, 0.25, 2 * corner) / Pound, 1e-6);
    }

    /// <summary>Method of Hay (from memory): 130 t and six coaches of 60 t, all K 0.07, 3,000 hp at 0.82; solved independently.</summary>
    [Theory]
    [InlineData(0, 0, 115.66205, 7975.8224)]
    [InlineData(1, 0, 69.167643, 13_337.161)]
    [InlineData(1, 3, 64.907933, 14_212.438)]
    public void A4_06_BalanceSpeed_OfATrain_IsWhereForcesMeet(double gradePercent, double curveDegrees, double milesAnHour, double pounds)
    {
        double[] machine = ResistanceForm.Modified().Sheet(130 * ShortTon, 4);
        double[] coach = ResistanceForm.Modified().Sheet(60 * ShortTon, 4);
        double[] train = [.. machine.Zip(coach, (m, c) => m + (6 * c))];
        double track = TrackResistance.PoundsPerTon(gradePercent, curveDegrees) * 490 * Pound;
        double speed = BalanceSpeed.MetresPerSecond(3000 * Horsepower * 0.82, train, track);
        Assert.Equal(milesAnHour, speed / Mph, 1e-6 * milesAnHour);
        Assert.Equal(pounds, 3000 * Horsepower * 0.82 / speed / Pound, 1e-6 * pounds);
    }

    /// <summary>Where adhesion does not hold the train on the grade it does not move; with nothing against it there is no balance below the end of the range.</summary>
    [Fact]
    public void BalanceSpeed_WithoutABalance_IsAnEndOfTheRange()
    {
        double[] train = ResistanceForm.Modified().Sheet(490 * ShortTon, 28);
        Assert.Equal(0, BalanceSpeed.MetresPerSecond(1e6, train, 3e5, mostNewtons: 2e5), 1e-9);
        Assert.Equal(200, BalanceSpeed.MetresPerSecond(1e6, train, -3e6), 1e-9);
    }

    /// <summary>Derived: 450 t with 5 %, 180 kN, 1.8 MW to 35 m/s; 0.01267(V2² − V1²) lb/ton·mile with g 32.16 (read in a text of railroad economics).</summary>
    [Fact]
    public void A4_07_Acceleration_ByForceThenPower_TimesAndDistances()
    {
        (double seconds, double metres) = Acceleration.ByForceAndPower(450e3 * 1.05, 180e3, 1.8e6, 10);
        Assert.Equal(26.25, seconds, 1e-9);
        Assert.Equal(131.25, metres, 1e-9);
        (seconds, metres) = Acceleration.ByForceAndPower(450e3 * 1.05, 180e3, 1.8e6, 35);
        Assert.Equal(173.90625, seconds, 1e-9);
        Assert.Equal(3795.3125, metres, 1e-9);

        // A short ton from 0 to 1 mph in a mile; with standard gravity in place of 32.16 ft/s².
        double pounds = Acceleration.NewtonsOverDistance(ShortTon, 0, Mph, 1609.344) / Pound;
        Assert.Equal(0.0126681, pounds * 9.80665 / (32.16 * 0.3048), 1e-6);
        Assert.Equal(91.170786 / 2, Acceleration.NewtonsOverDistance(ShortTon, 0, Mph, Mph) / Pound, 1e-5); // 1 mph per second for a second, half of it on average
    }

    /// <summary>Derived: 472.5 t, 52 kN, 12 N/(m/s)², to 25 m/s.</summary>
    [Fact]
    public void A4_08_Acceleration_AgainstDrag_TimeAndDistance()
    {
        (double seconds, double metres) = Acceleration.AgainstDrag(472.5e3, 52e3, 12, 25);
        Assert.Equal(239.13966, seconds, 1e-5);
        Assert.Equal(3066.4173, metres, 1e-4);
        Assert.Equal(65.828059, Acceleration.FinalSpeed(52e3, 12), 1e-6);
        Assert.Equal(double.PositiveInfinity, Acceleration.AgainstDrag(472.5e3, 52e3, 12, 66).Seconds);
    }

    /// <summary>Formulas read in a stored calculator page: 79 mph, 1 s dead, 4 s of build-up, 0.90 m/s².</summary>
    [Fact]
    public void A4_09_Stopping_WithBuildUp_TimeAndDistance()
    {
        (double seconds, double metres) = Stopping.WithBuildUp(35.31616, 0.90, 1, 4);
        Assert.Equal(798.25468, metres, 1e-5);
        Assert.Equal(42.240178, seconds, 1e-6);
        Assert.Equal(798.85468, Stopping.MetresByEquivalentTime(35.31616, 0.90, 1, 4), 1e-5);
    }

    /// <summary>Slow enough to stand before the brake is full: followed step by step. Source: the equation of motion.</summary>
    [Fact]
    public void A4_09_Stopping_BeforeTheBrakeIsFull_IsFollowedAsFarAsItGoes() =>
        Gen.Select(Gen.Double[0.2, 6], Gen.Double[0.3, 1.3], Gen.Double[0, 3], Gen.Double[0.5, 12]).Holds(x =>
        {
            (double speed, double full, double dead, double build) = x;
            (double seconds, double metres) = Stopping.WithBuildUp(speed, full, dead, build);
            const double Step = 1e-3;
            (double v, double way, double t) = (speed, speed * dead, 0);
            while (v > 0)
            {
                double a = full * Math.Min(1, (t + (Step / 2)) / build);
                way += (v - (a * Step / 2)) * Step;
                v -= a * Step;
                t += Step;
            }

            Assert.Equal(metres, way, 1e-3 + (1e-4 * metres));
            Assert.Equal(seconds, dead + t, 3e-3);
        });

    /// <summary>Any text: 60 mph, 0.90 m/s², 1.5 % down and up; 450 t with 5 %.</summary>
    [Fact]
    public void A4_10_Stopping_OnAGrade_DistanceAndEnergy()
    {
        Assert.Equal(477.76935, Stopping.MetresOnGrade(60 * Mph, 0.90, -0.015), 1e-5);
        Assert.Equal(343.54536, Stopping.MetresOnGrade(60 * Mph, 0.90, 0.015), 1e-5);
        Assert.Equal(169.96797e6, Stopping.Energy(450e3, 60 * Mph), 10.0);
        Assert.Equal(double.PositiveInfinity, Stopping.MetresOnGrade(20, 0.1, -0.03));
    }

    /// <summary>49 CFR 213.57 and appendix A, table 1 (read): the table prints 63, 85, 46 and 160.</summary>
    [Theory]
    [InlineData(4, 3, 2.5, 63.245553, 63)]
    [InlineData(2, 3, 1, 84.515425, 85)]
    [InlineData(3, 3, 4, 46.291005, 46)]
    [InlineData(6, 3, 0.5, 160.35675, 160)]
    public void A4_15_CurveSpeed_OfTheRule_IsPrintedInItsTable(double cant, double unbalance, double degrees, double expected, int printed)
    {
        double speed = CurveSpeed.MilesAnHour(cant, unbalance, degrees);
        Assert.Equal(expected, speed, 1e-5);
        Assert.Equal(printed, Math.Round(speed));
    }

    [Fact]
    public void A4_15_BalanceCant_OfTheRuleAndOfPhysics_AndTheLean()
    {
        Assert.Equal(5.04, CurveSpeed.BalanceInches(2, 60), 1e-12);
        Assert.Equal(5.0410181, CurveSpeed.Balance(60, 60 * Mph, TrackResistance.RadiusByArc(2)), 1e-6);
        Assert.Equal(5.7391705, CurveSpeed.LeanDegrees(6, 60), 1e-7);
        Assert.Equal(5.04, CurveSpeed.BalanceInches(2, CurveSpeed.MilesAnHour(5.04, 0, 2)), 1e-9);
    }
}
