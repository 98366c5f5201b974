using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Tests.Shapes;

public sealed class PathDataTests
{
    private static readonly SideMap _plain = new(Side.Left, 0, 0, 10, false);
    private static readonly SideMap _mirrored = new(Side.Right, 100, 0, 10, true);

    [Fact]
    public void Read_EveryCommand_BecomesAbsolute()
    {
        PathData path = PathData.Read("M1 1h2v3l-1-1c1 0 2 0 3 1s1 1 2 1q1 1 2 0t1 1a1 1 0 0 1 1 1z", out int? error);
        Assert.Null(error);
        Assert.Equal("MLLLCCQQAZ", string.Concat(path.Segments.Select(s => s.Command)));
        Assert.True(path.IsClosed);
    }

    [Fact]
    public void Read_MoveWithMorePairs_DrawsLines() =>
        Assert.Equal("MLL", string.Concat(PathData.Read("M0 0 1 1 2 0", out _).Segments.Select(s => s.Command)));

    [Fact]
    public void Read_SmoothCurve_ReflectsTheLastControl()
    {
        PathData path = PathData.Read("M0 0C0 1 1 1 2 0S4 -1 4 0", out _);
        Assert.Equal([3, -1, 4, -1, 4, 0], path.Segments[2].Numbers);
    }

    [Theory]
    [InlineData("M 0 0 L 1", 9)]
    [InlineData("L 1 1", 1)]
    [InlineData("M 0 0 X 1 1", 7)]
    [InlineData("M 0 zero", 4)]
    public void Read_BadText_SaysWhereAndKeepsWhatStandsBefore(string text, int at)
    {
        PathData path = PathData.Read(text, out int? error);
        Assert.Equal(at, error);
        Assert.All(path.Segments, s => Assert.Equal('M', s.Command));
    }

    [Fact]
    public void Draw_UpwardMetres_GoUpOnTheSheet() => Assert.Equal("M10 -20L30 0Z", PathData.Read("M1 2L3 0Z", out _).Draw(_plain).ToString());

    [Fact]
    public void Draw_MirroredArc_TurnsTheOtherWay()
    {
        PathData path = PathData.Read("M0 0A1 1 0 0 1 1 1", out _);
        Assert.Equal("M0 0A10 10 0 0 0 10 -10", path.Draw(_plain).ToString());
        Assert.Equal("M100 0A10 10 0 0 1 90 -10", path.Draw(_mirrored).ToString());
    }

    [Fact]
    public void Read_TheDemoSilhouettes_HaveNoErrorAndLieWithinTheMachine()
    {
        foreach (Silhouette side in DemoBooks.Curlew.Silhouettes)
        {
            foreach (Shape shape in side.Shapes)
            {
                PathData path = PathData.Read(shape.Path, out int? error);
                Assert.Null(error);
                Bounds box = path.Box()!.Value;
                bool end = side.Side is Side.Rear or Side.Front;
                Assert.InRange(box.Left, end ? -1.75 : -0.01, box.Right);
                Assert.InRange(box.Right, box.Left, end ? 1.75 : 21.01);
                Assert.InRange(box.High, box.Low, 4.7);
            }
        }
    }
}
