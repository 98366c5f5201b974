using CsCheck;
using Sightglass.Drawing.Labels;

namespace Sightglass.Drawing.Tests.Labels;

public sealed class FlagPlacerProperties
{
    private static readonly Gen<FlagRequest> _request =
        from x in Gen.Double[0, 1200]
        from width in Gen.Double[12, 190]
        select new FlagRequest(x, width);

    private static readonly Gen<FlagRequest[]> _requests = _request.Array[0, 40];

    // Several at the same spot, as on a valve panel.
    private static readonly Gen<FlagRequest[]> _crowded =
        from spots in Gen.Int[0, 6].Array[1, 25]
        from widths in Gen.Double[30, 160].Array[25]
        select spots.Select((s, i) => new FlagRequest(s * 40, widths[i])).ToArray();

    [Fact]
    public void Place_AnyFlags_NoneTouchAndNoPoleIsCovered() =>
        _requests.Holds(r => Assert.Null(FlagGeometry.Fault(FlagPlacer.Place(r))), iter: 150);

    [Fact]
    public void Place_ManyAtOneSpot_NoneTouchAndNoPoleIsCovered() =>
        _crowded.Holds(r => Assert.Null(FlagGeometry.Fault(FlagPlacer.Place(r))), iter: 150);

    [Fact]
    public void Place_WithCentredFlags_NoneTouchAndNoPoleIsCovered() =>
        _requests.Holds(r => Assert.Null(FlagGeometry.Fault(FlagPlacer.Place(r, centre: true))), iter: 100);

    [Fact]
    public void Place_SameRequests_SamePlaces() =>
        _requests.Holds(r => Assert.Equal(FlagPlacer.Place(r), FlagPlacer.Place(r)), iter: 30);

    [Fact]
    public void Board_AnyWishes_NoFaultInEitherRoomAndTiersAreKept() =>
        (from requests in _request.Array[0, 45]
         from ups in Gen.Bool.Array[45]
         from priorities in Gen.Int[0, 2].Array[45]
         select requests.Select((r, i) => new FlagWish(r, ups[i], 1, priorities[i])).ToArray()).Holds(
            wishes =>
            {
                var places = FlagBoard.Place(wishes, 5);
                foreach (bool up in new[] { true, false })
                {
                    FlagPlace[] room = [.. places.Where(p => p?.Up == up).Select(p => p!.Value.Place)];
                    Assert.Null(FlagGeometry.Fault(room));
                    Assert.True(room.All(p => p.Tier < 5));
                }
            },
            iter: 60);
}
