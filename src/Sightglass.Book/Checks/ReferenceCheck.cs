using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Checks;

/// <summary>Checks that every name used is declared.</summary>
internal sealed class ReferenceCheck(ClassBook book, Findings found)
{
    private const int MostCounterparts = 50;
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);

    public void Run(ImmutableArray<NameReference> references)
    {
        for (int i = 0; i < references.Length; i++)
        {
            NameReference r = references[i];
            if (r.Use == NameUse.Position)
            {
                CheckPosition(r);
            }
            else if (!IsDeclared(r.Use, r.Name))
            {
                NameReference next = i + 1 < references.Length ? references[i + 1] : default;
                if (TornApart(r, next) is { } torn)
                {
                    found.Add(torn);
                    i++;
                    continue;
                }

                found.Add(BookMessages.NotDeclared(r.Use, r.Span, r.Name, found.Similar(Names(r.Use))));
                Counterpart(r, references);
            }
        }
    }

    /// <summary>Where a name that is not declared resembles a declared one that nothing uses, the declaration may be the mistyped one.</summary>
    private void Counterpart(NameReference missing, ImmutableArray<NameReference> references)
    {
        if (missing.Use is NameUse.RoadNumber or NameUse.Card or NameUse.Car or NameUse.Train || !_told.Add(missing.Name) || _told.Count > MostCounterparts || found.Similar(Names(missing.Use)).Count == 0)
        {
            return;
        }

        HashSet<string> used = [.. references.Where(r => r.Use == missing.Use).Select(r => r.Name)];
        if (missing.Use == NameUse.Item)
        {
            used.UnionWith(book.Items.Values.SelectMany(i => new[] { i.From?.Item ?? "", i.To?.Item ?? "" }));
        }

        string[] unused = [.. Names(missing.Use).Where(n => !used.Contains(n))];
        string? near = Nearest.Find(missing.Name, unused)
            ?? Array.Find(unused, n => IsPart(n, missing.Name) || IsPart(missing.Name, n));
        if (near is not null && _told.Add(near))
        {
            found.Add(BookMessages.PerhapsMeant(SpanOf(missing.Use, near), near, missing.Name, missing.Span));
        }
    }

    private static bool IsPart(string part, string whole) => part.Length * 3 > whole.Length && whole.Contains(part, StringComparison.Ordinal);

    private Span SpanOf(NameUse use, string name) => use switch
    {
        NameUse.Item => book.Items[name].Span,
        NameUse.Place => book.Places[name].Span,
        NameUse.Role => book.Roles[name].Span,
        NameUse.System => book.Systems[name].Span,
        NameUse.Situation => book.Situations[name].Span,
        NameUse.Recording => book.Recordings[name].Span,
        _ => book.Protections[name].Span,
    };

    /// <summary>Two elements of a list that are one name with a comma, written without quotes.</summary>
    private Diagnostic? TornApart(NameReference one, NameReference next)
    {
        string joined = $"{one.Name}, {next.Name}";
        return next.Use == one.Use && next.Name is not null && IsDeclared(one.Use, joined) ? BookMessages.TornApart(one.Span, one.Name, joined) : null;
    }

    private bool IsDeclared(NameUse use, string name) => use switch
    {
        NameUse.Item => book.Items.ContainsKey(name),
        NameUse.Place => book.Places.ContainsKey(name),
        NameUse.Role => book.Roles.ContainsKey(name),
        NameUse.System => book.Systems.ContainsKey(name),
        NameUse.Protection => book.Protections.ContainsKey(name),
        NameUse.Card => book.CardNames.Contains(name, StringComparer.Ordinal),
        NameUse.Car => book.Cars.ContainsKey(name),
        NameUse.Train => book.Trains.ContainsKey(name),
        NameUse.Situation => book.Situations.ContainsKey(name),
        NameUse.Recording => book.Recordings.ContainsKey(name),
        _ => book.RoadNumbers.ContainsKey(name),
    };

    private IEnumerable<string> Names(NameUse use) => use switch
    {
        NameUse.Item => book.Items.Keys,
        NameUse.Place => book.Places.Keys,
        NameUse.Role => book.Roles.Keys,
        NameUse.System => book.Systems.Keys,
        NameUse.Protection => book.Protections.Keys,
        NameUse.Card => book.CardNames,
        NameUse.Car => book.Cars.Keys,
        NameUse.Train => book.Trains.Keys,
        NameUse.Situation => book.Situations.Keys,
        NameUse.Recording => book.Recordings.Keys,
        _ => book.RoadNumbers.Keys,
    };

    /// <summary>A position by which a parameter is given must be one of the item or of the items its other parameters name.</summary>
    private void CheckPosition(NameReference r)
    {
        if (!book.Items.TryGetValue(r.Owner, out Item? item))
        {
            return;
        }

        Item[] named = [.. item.Kind.Parameters.Where(p => p.Type is ParameterType.Item or ParameterType.Items)
            .SelectMany(p => item.Parameters.GetValueOrDefault(p.Name)?.Names ?? [])
            .Select(n => book.Items.GetValueOrDefault(n)).OfType<Item>()];
        Item[] sources = named.Any(i => i.Positions.Length > 0) ? [.. named] : [item];
        string[] positions = [.. sources.SelectMany(i => i.Positions).Distinct(StringComparer.Ordinal)];
        if (!positions.Contains(r.Name))
        {
            found.Add(BookMessages.NoSuchPosition(r.Span, r.Name, sources.FirstOrDefault(i => i.Positions.Length > 0)?.Name ?? item.Name, positions));
        }
    }
}
