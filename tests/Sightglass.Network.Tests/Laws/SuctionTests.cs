namespace Sightglass.Network.Tests.Laws;

/// <summary>How a suction line loses its prime and regains it. Common practice, no source; the figures follow from the rig's sizes.</summary>
public sealed class SuctionTests
{
    [Fact]
    public void Pump_WithCoveredPickup_DeliversItsDisplacement()
    {
        using SuctionRig rig = new();
        rig.RunTo(10);
        double before = rig.Delivered;
        rig.RunTo(50);
        Assert.Equal(40 * 7.5 * 20e-6 * SuctionRig.Density, rig.Delivered - before, 0.003 * 5);
        Assert.InRange(rig.SuctionVoid, 0, 2e-4);
    }

    [Fact]
    public void Pump_WithUncoveredPickup_LosesItsPrimeAndLeavesTheRest()
    {
        using SuctionRig rig = new();
        rig.RunTo(300);
        Assert.InRange(rig.SuctionVoid, 0.9, 1);
        Assert.InRange(rig.Level, 0.04, 0.055);
        double before = rig.Delivered;
        rig.RunTo(360);
        Assert.InRange(rig.Delivered - before, 0, 0.1 * 60 * 7.5 * 20e-6 * SuctionRig.Density);
    }

    [Fact]
    public void Pump_WhenThePickupIsCoveredAgain_RegainsItsPrime()
    {
        using SuctionRig rig = new();
        rig.RunTo(300);
        rig.Supply(true);
        rig.RunTo(600);
        Assert.InRange(rig.SuctionVoid, 0, 1e-3);
        double before = rig.Delivered;
        rig.RunTo(640);
        Assert.Equal(40 * 7.5 * 20e-6 * SuctionRig.Density, rig.Delivered - before, 0.003 * 5);
    }

    [Fact]
    public void Amounts_WhateverRanWhere_StayTheSame()
    {
        using SuctionRig rig = new();
        (double liquid, double air) = rig.Sum;
        rig.RunTo(300);
        rig.Supply(true);
        rig.RunTo(600);
        Assert.Equal(liquid, rig.Sum.Liquid, 1e-12 * 100);
        Assert.Equal(air, rig.Sum.Air, 1e-12);
    }

    /// <summary>A pressure that falls below zero, or a step count that explodes, would show here.</summary>
    [Fact]
    public void SuctionPressure_AllAlong_StaysAboveZero()
    {
        using SuctionRig rig = new();
        for (int t = 1; t <= 60; t++)
        {
            rig.RunTo(t * 5);
            Assert.True(rig.SuctionPressure > 0, $"{rig.SuctionPressure} Pa at {t * 5} s");
        }

        Assert.InRange(rig.Steps, 1, 1000);
    }
}
