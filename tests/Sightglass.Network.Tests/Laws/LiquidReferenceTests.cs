namespace Sightglass.Network.Tests.Laws;

public sealed class LiquidReferenceTests
{
    [Fact]
    public void A1_01_Torricelli_Draining_TakesTheTimeOfTheClosedForm() => LiquidReferences.Torricelli.Holds();

    [Fact]
    public void A1_02_TwoTanks_Equalising_TakeTheTimeOfTheClosedForm() => LiquidReferences.Equalising.Holds();
}
