namespace Sightglass.Network.Tests.Laws;

public sealed class LiquidReferenceTests
{
    [Fact]
    public void A1_01_Torricelli_Draining_TakesTheTimeOfTheClosedForm() => LiquidReferences.Torricelli.Holds();

    [Fact]
    public void A1_02_TwoTanks_Equalising_TakeTheTimeOfTheClosedForm() => LiquidReferences.Equalising.Holds();

    [Fact]
    public void A1_03_FrictionFactor_ByFourFormulas_HasTheirValues() => LiquidReferences.Friction.Holds();

    [Fact]
    public void A1_04_PipeWithFittings_AtTheLoss_PassesTheFlow() => LiquidReferences.PipeWithFittings.Holds();

    [Fact]
    public void A1_05_ValveCoefficients_OfEitherKind_PassTheSameFlow() => LiquidReferences.ValveCoefficients.Holds();

    [Fact]
    public void A1_06_Pumps_MeetTheirSystem_WhereTheClosedFormsSay() => LiquidReferences.PumpMeetsSystem.Holds();

    [Fact]
    public void A1_07_ParallelBranches_ShareTheFlow_ByTheirRoots() => LiquidReferences.ParallelBranches.Holds();

    [Fact]
    public void A1_08_SuctionLine_AtItsEnd_HasTheHeadThatIsLeft() => LiquidReferences.SuctionLimit.Holds();
}
