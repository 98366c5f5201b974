using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Checks;

/// <summary>Warnings about items that a person meets: no place, no text, nobody named, outside of the machine.</summary>
internal static class ItemChecks
{
    /// <summary>How far an item may stand out of the class's box, metres: couplers, mirrors, antennas.</summary>
    private const double Margin = 0.5;

    /// <summary>Higher than any vehicle, metres.</summary>
    private const double Top = 7;

    public static void Run(ClassBook book, DiagnosticList found)
    {
        foreach (Item item in book.Items.Values)
        {
            Placed(item, found);
            Texts(item, found);
            if (item is { Positions.Length: > 0, Kind.Role: not KindRole.Signal } && (item.Authority is null || item.Authority.Who.Length == 0))
            {
                found.Add(BookMessages.AnyoneOperates(item.Span, item.Name));
            }

            if (item.Position is { } p && !IsInside(p, book))
            {
                found.Add(BookMessages.OutsideMachine(item.Span, item.Name));
            }
        }
    }

    private static void Placed(Item item, DiagnosticList found)
    {
        bool isMet = item.Positions.Length > 0 || item.Kind.Role is KindRole.Described or KindRole.Indication or KindRole.Control;
        if (isMet && item.Places.Length == 0)
        {
            found.Add(BookMessages.NoPlace(item.Span, item.Name));
        }
    }

    private static void Texts(Item item, DiagnosticList found)
    {
        if (item.Places.Length == 0)
        {
            return;
        }

        List<string> missing = [];
        AddIfEmpty(item.Purpose, "for");
        AddIfEmpty(item.Normal, "normal");
        if (missing.Count > 0)
        {
            found.Add(BookMessages.TextsMissing(item.Span, item.Name, missing));
        }

        void AddIfEmpty(string text, string key)
        {
            if (text.Length == 0)
            {
                missing.Add(key);
            }
        }
    }

    private static bool IsInside(Point3 p, ClassBook book) =>
        p.X >= -Margin && p.X <= book.Length + Margin && Math.Abs(p.Y) <= (book.Width / 2) + Margin && p.Z >= -Margin && p.Z <= Top;
}
