using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Training.Routes;

/// <summary>The places of a whole side, so that one can be closed with a word: what stands on the ground beside the machine there, and the way past it.</summary>
public static class RouteSides
{
    public static ImmutableArray<string> Names { get; } = ["left side", "right side", "front", "rear"];

    /// <summary>None for a word that is no side. Places of the book by that name come first: a word that is one of them closes that place alone.</summary>
    public static IEnumerable<string> PlacesOf(ClassBook book, string side)
    {
        ArgumentNullException.ThrowIfNull(book);
        double half = book.Width / 2;
        Func<Point3, bool>? beside = side switch
        {
            "left side" => p => p.Y < -half,
            "right side" => p => p.Y > half,
            "front" => p => p.X < book.Front,
            "rear" => p => p.X > book.Front + book.Length,
            _ => null,
        };
        return beside is null || book.Places.ContainsKey(side) ? [] : book.PlacesInOrder.Where(p => p.OnGround && beside(p.Position)).Select(p => p.Name);
    }
}
