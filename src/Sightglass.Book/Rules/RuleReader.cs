using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Rules;

/// <summary>
/// Reads a set of published rules: every <c>*.yaml</c> of a folder put together. Reports everything it finds at once (R001…R008, and the codes of any file of a
/// book); hostile input is refused within the same limits and never throws.
/// </summary>
public static class RuleReader
{
    /// <summary>Reads the set in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="found">Takes errors and warnings; paths in them are relative to the folder.</param>
    /// <param name="limits">How large it may be.</param>
    /// <returns>The set, or null where there was an error.</returns>
    public static RuleSet? Read(string folder, DiagnosticList found, YamlLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(found);
        if (!Directory.Exists(folder))
        {
            found.Add(RuleMessages.NoFolder(folder));
            return null;
        }

        Findings findings = new(found, limits ?? YamlLimits.Default);
        BookFolder files = new(folder, findings.Limits, findings);
        files.Read();
        if (files.Yaml.IsEmpty && !findings.HasErrors)
        {
            findings.Add(RuleMessages.NoFiles(folder));
        }

        return files.Yaml.IsEmpty ? null : Read(files.Yaml, findings);
    }

    /// <summary>Reads a set from texts in memory.</summary>
    public static RuleSet? Read(IReadOnlyList<SourceText> yaml, DiagnosticList found, YamlLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(yaml);
        return Read(yaml, new Findings(found, limits ?? YamlLimits.Default));
    }

    private static RuleSet? Read(IReadOnlyList<SourceText> yaml, Findings found)
    {
        YamlFile file = new(new YamlBudget(found.Limits), found);
        ReadContext context = new(found, new KindCatalog([]));
        RuleSections sections = new(context);
        foreach (SourceText source in yaml)
        {
            foreach (YamlNode document in file.Read(source))
            {
                sections.Add(document);
            }
        }

        Span first = yaml.Count > 0 ? yaml[0].Between(0, 0) : Span.None;
        MapReader head = new(sections.Head, first, "the set of rules", context);
        if (!found.AnyDamage)
        {
            head.Required("rules", "NAME OF THE PUBLICATION");
            head.Required("edition", "2015 annual edition");
        }

        RuleQuantity[] quantities = [.. sections["quantities"].Select(e => Quantity(e, context)).OfType<RuleQuantity>()];
        NameTable names = Names(quantities);
        RuleSet set = new()
        {
            Title = head.Text("rules", "?"),
            Edition = head.Text("edition"),
            Text = head.Text("text"),
            Quantities = quantities.ToImmutableSortedDictionary(q => q.Name, q => q, StringComparer.Ordinal),
            Names = names,
            Rows = [.. sections["rows"].Select(e => new RuleRowReader(names, head.Text("edition"), context).Read(e)).OfType<RuleRow>()],
        };
        if (!found.HasErrors)
        {
            TellUnused(set, context);
        }

        return found.HasErrors ? null : set;
    }

    private static RuleQuantity? Quantity(YamlEntry e, ReadContext context)
    {
        if (!NameRules.Check(e.Key, context) || MapReader.Of(e.Value, e.Key.Span, $"the quantity `{e.Name}`", context) is not { } map)
        {
            return null;
        }

        Unit? unit = null;
        if (map.Scalar("shown in") is { } symbol && (unit = UnitTable.Find(symbol.Value)) is null)
        {
            context.Add(BookMessages.UnknownUnit(symbol.Span, symbol.Value, UnitTable.Symbols));
        }

        RuleQuantity quantity = new(e.Name, e.Key.Span, unit, map.Text("text"));
        map.Finish();
        return quantity;
    }

    private static NameTable Names(IEnumerable<RuleQuantity> quantities)
    {
        NameTable names = new();
        foreach (RuleQuantity q in quantities)
        {
            _ = q.Unit is { } unit ? names.AddValue(q.Name, unit.Dimension, unit) : names.AddCondition(q.Name);
        }

        return names;
    }

    private static void TellUnused(RuleSet set, ReadContext context)
    {
        HashSet<int> used = [.. set.Rows.SelectMany(r => r.Names).Select(n => n.Id)];
        foreach (RuleQuantity q in set.Quantities.Values.Where(q => set.Names.TryGet(q.Name, out FormulaName name) && !used.Contains(name.Id)))
        {
            context.Add(RuleMessages.Unused(q.Span, q.Name));
        }
    }
}
