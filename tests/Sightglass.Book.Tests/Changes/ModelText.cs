using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Book.Tests.Changes;

/// <summary>Everything a book says, as lines <c>path = value</c>, without the places where it stands: to see what a change changed.</summary>
internal static class ModelText
{
    private static readonly ConditionalWeakTable<ClassBook, Dictionary<string, string>> s_told = [];

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> s_properties = new();

    private static Dictionary<string, string> Of(ClassBook book) => s_told.GetValue(book, Tell);

    private static Dictionary<string, string> Tell(ClassBook book)
    {
        Dictionary<string, string> lines = new(StringComparer.Ordinal);
        Add(lines, "", book, 0);
        foreach (string number in book.RoadNumbers.Keys)
        {
            Add(lines, number, book.For(number).Items, 0);
        }

        return lines;
    }

    /// <summary>Lines that are not the same in both.</summary>
    public static string[] Differences(ClassBook before, ClassBook after)
    {
        Dictionary<string, string> a = Of(before), b = Of(after);
        return [.. a.Keys.Union(b.Keys, StringComparer.Ordinal).Where(k => a.GetValueOrDefault(k) != b.GetValueOrDefault(k)).Order(StringComparer.Ordinal)
            .Select(k => $"{k}: {a.GetValueOrDefault(k) ?? "(nothing)"} → {b.GetValueOrDefault(k) ?? "(nothing)"}")];
    }

    private static void Add(Dictionary<string, string> lines, string path, object? value, int depth)
    {
        switch (value)
        {
            case null or Span or SourceText:
                break;
            case string or bool or int or Enum or DateOnly:
                lines[path] = value.ToString()!;
                break;
            case double d:
                lines[path] = d.ToString("R", CultureInfo.InvariantCulture);
                break;
            case KindSheet kind:
                lines[path] = kind.Name;
                break;
            case IDictionary map:
                foreach (DictionaryEntry e in map)
                {
                    Add(lines, $"{path}/{e.Key}", e.Value, depth + 1);
                }

                break;
            case IEnumerable list:
                int i = 0;
                foreach (object? element in list)
                {
                    Add(lines, $"{path}/{(element is Item or Place or Hazard or Fact ? $"{i++} {Named(element)}" : i++)}", element is Item or Place or Hazard or Fact ? Named(element) : element, depth + 1);
                }

                break;
            default:
                Assert.True(depth < 40, path);
                if (value.GetType() is { IsPrimitive: true } || value.GetType().Namespace?.StartsWith("Sightglass", StringComparison.Ordinal) != true)
                {
                    lines[path] = Convert.ToString(value, CultureInfo.InvariantCulture)!;
                    break;
                }

                foreach (PropertyInfo p in s_properties.GetOrAdd(value.GetType(), t => [.. t.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0)]))
                {
                    Add(lines, $"{path}.{p.Name}", p.GetValue(value), depth + 1);
                }

                break;
        }
    }

    /// <summary>Of things that are told in full under their names: where they stand in an order.</summary>
    private static string Named(object thing) => (string)thing.GetType().GetProperty("Name")!.GetValue(thing)!;
}
