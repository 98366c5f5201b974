namespace Sightglass.Network.Tests.Laws;

public sealed class GasReferenceTests
{
    [Fact]
    public void A2_01_Orifice_ChokedAndNot_PassesTheFlowOfTheFormula() => GasReferences.Orifice.Holds();

    [Fact]
    public void A2_02_IsothermalBlowDown_ToTwoBar_TakesTheTimeOfTheClosedForm() => GasReferences.IsothermalBlowDown.Holds();

    [Fact]
    public void A2_03_AdiabaticBlowDown_ToTwoBar_TakesTheTimeOfTheClosedForm() => GasReferences.AdiabaticBlowDown.Holds();

    [Fact]
    public void A2_04_Component_ChokedAndNot_PassesTheFlowOfTheStandard() => GasReferences.Component.Holds();

    [Fact]
    public void A2_05_Charging_ToEachPressure_TakesTheTimeOfTheClosedForm() => GasReferences.Charging.Holds();

    [Fact]
    public void A2_06_PumpUp_WithConstantFreeAir_TakesTheTimeOfTheClosedForm() => GasReferences.PumpUp.Holds();

    [Fact]
    public void A2_09_IsothermalPipe_OfALengthOrForAFlow_HasTheValuesOfTheFormula() => GasReferences.Pipe.Holds();

    [Fact]
    public void A2_07_Leakage_ByTheRateOfPressure_IsTheCapacityTimesIt() => GasReferences.LeakageByRate.Holds();

    [Fact]
    public void A2_08_TwoVolumes_Equalising_FollowBoyle() => GasReferences.Equalising.Holds();
}
