namespace Sightglass.Network.Tests.Stores;

public sealed class StoreReferenceTests
{
    [Fact]
    public void A1_11_TiltedFloor_WetAndDry_HasTheDepthsOfTheGeometry() => StoreReferences.TiltedFloor.Holds();

    [Fact]
    public void A1_10_LyingRoundTank_Dip_HasTheHeightsOfTheSegment() => StoreReferences.LyingRoundDip.Holds();
}
