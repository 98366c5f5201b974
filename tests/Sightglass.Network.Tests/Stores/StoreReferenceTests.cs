namespace Sightglass.Network.Tests.Stores;

public sealed class StoreReferenceTests
{
    [Fact]
    public void A1_11_TiltedFloor_WetAndDry_HasTheDepthsOfTheGeometry() => StoreReferences.TiltedFloor.Holds();

    [Fact]
    public void A1_10_LyingRoundTank_Dip_HasTheHeightsOfTheSegment() => StoreReferences.LyingRoundDip.Holds();

    [Fact]
    public void DipTable_OfACone_HasTheConesLevels() => StoreReferences.DippedCone.Holds();

    [Fact]
    public void Piston_InHalfWayAndOut_HasThePressuresOfBoyle() => StoreReferences.Piston.Holds();

    [Fact]
    public void Line_OfLiquidAndAir_HasThePressuresOfTheQuadratic() => StoreReferences.LineOfBoth.Holds();
}
