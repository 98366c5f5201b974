using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Quantities;

public sealed class TypedValueTests
{
    public static TheoryData<string> Factories => [.. s_factories.Keys];

    private static readonly Dictionary<string, Func<double, object>> s_factories = new()
    {
        ["Pressure"] = x => Pressure.FromPascals(x),
        ["Pressure.Psia"] = x => Pressure.FromPsia(x),
        ["GaugePressure"] = x => GaugePressure.FromPsi(x),
        ["Temperature"] = x => Temperature.FromDegreesCelsius(x),
        ["TemperatureDifference"] = x => TemperatureDifference.FromKelvins(x),
        ["Volume"] = x => Volume.FromUsGallons(x),
        ["Length"] = x => Length.FromInches(x),
        ["Mass"] = x => Mass.FromPounds(x),
    };

    [Theory]
    [MemberData(nameof(Factories))]
    public void From_WhatIsNotFinite_IsRefused(string factory)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => s_factories[factory](double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => s_factories[factory](double.PositiveInfinity));
    }

    [Fact]
    public void Pressure_BelowVacuum_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Pressure.FromPascals(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => GaugePressure.FromPsi(-15).In(Pressure.StandardAtmosphere));
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromDegreesCelsius(-274));
    }

    [Fact]
    public void Pressure_GaugeAndAbsolute_DifferByTheAtmosphere()
    {
        GaugePressure gauge = GaugePressure.FromPsi(90);
        Assert.Equal(104.695949, gauge.In(Pressure.StandardAtmosphere).Psia, 1e-6);
        Assert.Equal(90, gauge.In(Pressure.StandardAtmosphere).Above(Pressure.StandardAtmosphere).Psi, 1e-10);
    }

    [Fact]
    public void Readers_OtherUnits_ConvertBothWays()
    {
        Assert.Equal(98.6, Temperature.FromDegreesCelsius(37).DegreesFahrenheit, 1e-10);
        Assert.Equal(18, (Temperature.FromDegreesFahrenheit(68) - Temperature.FromDegreesFahrenheit(50)).FahrenheitSteps, 1e-10);
        Assert.Equal(1.0, Volume.FromUsGallons(264.1720523581484).CubicMetres, 1e-12);
        Assert.Equal(12, Length.FromFeet(1).Inches, 1e-12);
        Assert.Equal(907.18474, Mass.FromShortTons(1).Kilograms, 1e-9);
        Assert.Equal(2.5, GaugePressure.FromBar(2.5).Kilopascals / 100, 1e-12);
    }

    [Fact]
    public void ToString_Values_NameTheirUnit()
    {
        Assert.Equal("101.3\u202FkPa abs", Pressure.StandardAtmosphere.ToString());
        Assert.Equal("20\u202F°C", Temperature.FromDegreesCelsius(20).ToString());
        Assert.Equal("2.5\u202Fm", Length.FromMetres(2.5).ToString());
    }
}
