using System.Collections.Immutable;
using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Tests.Labels;

namespace Sightglass.Drawing.Tests.Strip;

public sealed class StripLayoutProperties
{
    private static readonly KindSheet _kind = new() { Name = "described", Purpose = "" };

    private static readonly Gen<ClassBook> _book =
        from length in Gen.Double[6, 30]
        from width in Gen.Double[2, 4]
        from places in Gen.Select(Gen.Double[-2, 32], Gen.Double[-3, 3]).Array[1, 14]
        from items in Gen.Select(Gen.Double[0, 30], Gen.Double[-2, 2], Gen.Double[0, 4.5], Gen.Int[0, 13], Gen.String[Gen.Char.AlphaNumeric, 1, 26]).Array[0, 45]
        select Book(length, width, places, items);

    [Fact]
    public void Of_AnyBook_LabelsKeepTheirDistanceAndPolesStayFree() => _book.Holds(
        book =>
        {
            StripLayout layout = StripLayout.Of(book, new StripOptions { CurrentPlace = book.Places.Keys.First() });
            foreach (bool up in new[] { true, false })
            {
                Assert.Null(FlagGeometry.Fault([.. layout.Items.Where(i => i.Flag?.Up == up).Select(i => i.Flag!.Place)]));
            }

            Bounds[] labels = [.. layout.Items.Where(i => i.Flag is not null).Select(i => i.Flag!.Box), .. layout.Stops.Where(s => s.Label is not null).Select(s => s.Label!.Value)];
            for (int i = 0; i < labels.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    Assert.True(labels[i].DistanceTo(labels[j]) >= FlagPlacer.Gap - 1e-6);
                }
            }
        },
        iter: 40);

    [Fact]
    public void Of_AnyBook_EveryGroundPlaceIsAStopInWalkingOrder() => _book.Holds(
        book =>
        {
            StripLayout layout = StripLayout.Of(book);
            StripStop[] ground = [.. layout.Stops.Where(s => s.Stop.Place.OnGround)];
            Assert.Equal(book.Places.Count, ground.Length);
            Assert.True(ground.Zip(ground.Skip(1)).All(p => p.First.X >= p.Second.X - 1e-9));
        },
        iter: 60);

    [Fact]
    public void Of_PlacesFarBeyondTheCorners_KeepTheWalkingOrder() => _book.Sample(
        book =>
        {
            StripStop[] ground = [.. StripLayout.Of(book).Stops.Where(s => s.Stop.Place.OnGround)];
            Assert.True(ground.Zip(ground.Skip(1)).All(p => p.First.X >= p.Second.X - 1e-9));
        },
        seed: "76PdXdZGJoU2",
        iter: 1);

    private static ClassBook Book(double length, double width, (double X, double Y)[] places, (double X, double Y, double Z, int Place, string Name)[] items)
    {
        ImmutableSortedDictionary<string, Place> named = places
            .Select((p, i) => new Place($"place {i}", Span.None, new Point3(Math.Min(p.X, length + 2), p.Y, 0), true, ""))
            .ToImmutableSortedDictionary(p => p.Name, p => p, StringComparer.Ordinal);
        return new ClassBook
        {
            Title = "Any",
            Length = length,
            Width = width,
            Places = named,
            Items = items.Select((n, i) => new Item
            {
                Name = $"{n.Name} {i}",
                Span = Span.None,
                Kind = _kind,
                Position = new Point3(Math.Min(n.X, length), n.Y, n.Z),
                Places = [$"place {n.Place % places.Length}"],
            }).ToImmutableSortedDictionary(i => i.Name, i => i, StringComparer.Ordinal),
        };
    }
}
