using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Entries that are to say something else: each edit is proved as that of a single value is, and no comment is lost.</summary>
public sealed partial class BookText
{
    /// <summary>Edits of one entry, at most: more than it has keys.</summary>
    private const int MostEdits = 2_000;

    /// <summary>The file with the entry as it is to be, or why there is none. Nothing is written.</summary>
    public ChangePlan PlanEntry(EntryChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (Book is null)
        {
            return ChangePlan.No(ChangeMessages.HasErrors(FirstError!));
        }

        if (_yaml.FirstOrDefault(s => BodyIn(File(s), change) is not null) is not { } source)
        {
            return ChangePlan.No(ChangeMessages.NoEntry(change.Section, change.Name));
        }

        FileText file = File(source);
        for (int edits = 0; edits <= MostEdits; edits++)
        {
            if (new EntryEdit(file).Next(BodyIn(file, change)!, change.Was, change.Becomes) is not { } edit)
            {
                return edits == 0 ? ChangePlan.No(ChangeMessages.NothingToChange(change.Name))
                    : Proved([.. _yaml.Select(s => ReferenceEquals(s, source) ? file.Source : s)], explained: true, new(source.Path, source.Text, file.Source.Text), new(source, 0, 0));
            }

            Span at = new(file.Source, edit.Start, 0);
            if (file.HoldsComment(edit))
            {
                return ChangePlan.No(ChangeMessages.HoldsComment(at));
            }

            FileText after = new(new SourceText(source.Path, edit.Apply(file.Source.Text)));
            if (!edit.Explains(file.Documents, after.Documents) || BodyIn(after, change) is null)
            {
                return ChangePlan.No(ChangeMessages.NotUnderstood(at));
            }

            file = after;
        }

        return ChangePlan.No(ChangeMessages.NotUnderstood(new(source, 0, 0)));
    }

    private static YamlMap? BodyIn(FileText file, EntryChange change) => file.Documents.OfType<YamlMap>()
        .Select(d => (d.Find(change.Section)?.Value as YamlMap)?.Find(change.Name)?.Value).OfType<YamlMap>().FirstOrDefault(m => m.Entries.Length > 0);
}
