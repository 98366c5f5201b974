using Sightglass.Plant.Calculators.Light;
using Sightglass.Plant.Calculators.Sound;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Expected values computed independently from the formulas named beside each.</summary>
public sealed class SoundAndLightCalculatorTests
{
    /// <summary>Any text of acoustics.</summary>
    [Fact]
    public void A6_01_SoundLevel_ByDistanceAndInSum_InDecibels()
    {
        Assert.Equal(87.958800, SoundLevel.AtDistance(100, 100, 400), 1e-6);
        Assert.Equal(80, SoundLevel.AtDistance(100, 100, 1000), 1e-9);
        Assert.Equal(1000, SoundLevel.DistanceOf(100, 100, 80), 1e-9);
        Assert.Equal(99.010300, SoundLevel.Sum(96, 96), 1e-6);
        Assert.Equal(97.921761, SoundLevel.Sum(96, 92, 88), 1e-6);
    }

    /// <summary>29 CFR 1910.95 appendix A with its worked example (read): 90 dB 4 h, 95 dB 2 h, 85 dB 2 h; table 12.1 h at 87 dB.</summary>
    [Fact]
    public void A6_02_Dose_OfTheRulesExample_AndOfTheStricterCriterion()
    {
        (double, double)[] day = [(90, 4 * 3600), (95, 2 * 3600), (85, 2 * 3600)];
        Assert.Equal(112.5, NoiseDose.Osha.Percent(day), 1e-9);
        Assert.Equal(90.849643, NoiseDose.Osha.DayLevel(112.5), 1e-6);
        Assert.Equal(12.125733, NoiseDose.Osha.AllowedSeconds(87) / 3600, 1e-6);
        Assert.Equal(12.1, Math.Round(NoiseDose.Osha.AllowedSeconds(87) / 3600, 1));
        Assert.Equal(435.72432, NoiseDose.Niosh.Percent(day), 1e-5);
        Assert.Equal(91.392118, NoiseDose.Niosh.DayLevel(NoiseDose.Niosh.Percent(day)), 1e-6);
    }

    /// <summary>49 CFR 227.5 (read, 2015): 85 dB(A) over eight hours is half of the dose, where a hearing programme begins.</summary>
    [Fact]
    public void NoiseDose_AtTheActionLevel_IsAHalf()
    {
        Assert.Equal(50, NoiseDose.Osha.Percent((85, 8 * 3600)), 1e-9);
        Assert.Equal(85, NoiseDose.Osha.DayLevel(50), 1e-3);
    }

    /// <summary>IEC 61672-1 (from memory); the printed weights are within a tenth of a decibel.</summary>
    [Theory]
    [InlineData(63, -26.222967, -26.2)]
    [InlineData(125, -16.189795, -16.1)]
    [InlineData(250, -8.6749688, -8.6)]
    [InlineData(500, -3.2479490, -3.2)]
    [InlineData(1000, 0, 0)]
    [InlineData(2000, 1.2015327, 1.2)]
    [InlineData(4000, 0.96345638, 1.0)]
    [InlineData(8000, -1.1470209, -1.1)]
    public void A6_03_AWeighting_OfAnOctave_IsTheFormulasAndNearThePrintedOne(double hertz, double expected, double printed)
    {
        Assert.Equal(expected, AWeighting.Decibels(hertz), 1e-6);
        Assert.Equal(printed, AWeighting.Decibels(hertz), 0.1);
    }

    [Fact]
    public void A6_03_AWeighting_OfASpectrum_SumsToTheLevel() => Assert.Equal(85.519334, AWeighting.OfOctaves([78, 82, 85, 84, 80, 77, 72, 65]), 1e-6);

    /// <summary>Photometry; 200,000 cd is the headlight of 49 CFR 229.125 and 229.133 (read).</summary>
    [Fact]
    public void A6_04_Illuminance_OfAHeadlight_AndAFlash()
    {
        Assert.Equal(3.3637220, Illuminance.Facing(200_000, 800 * 0.3048), 1e-6);
        Assert.Equal(0.23919801, Illuminance.Facing(200_000, 3000 * 0.3048), 1e-8);
        Assert.Equal(2.2217423, Illuminance.OnUpright(200_000, 3.6, 300), 1e-6);
        Assert.Equal(0.026660908, Illuminance.OnGround(200_000, 3.6, 300), 1e-8);
        Assert.Equal(10.313233, Illuminance.ArcMinutes(0.6, 200), 1e-5);
        Assert.Equal(200, Illuminance.EffectiveCandela(1000, 0.05), 1e-9);
    }
}
