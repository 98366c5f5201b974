using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Additions: proved as changes are.</summary>
public sealed partial class BookText
{
    /// <summary>The file with one more entry, or why there is none. Nothing is written.</summary>
    public ChangePlan Added(BookAddition addition)
    {
        ArgumentNullException.ThrowIfNull(addition);
        if (Book is null)
        {
            return ChangePlan.No(ChangeMessages.HasErrors(FirstError!));
        }

        FileText[] files = [.. _yaml.Select(File)];
        if (AdditionEdit.Has(addition, files))
        {
            return ChangePlan.No(ChangeMessages.HasAlready(addition.Section, addition.Name));
        }

        if (AdditionEdit.Find(addition, files) is var (file, edit))
        {
            return Proved(addition, file, edit);
        }

        SourceText made = AdditionEdit.Alone(addition);
        if (files.Any(f => f.Source.Path == made.Path))
        {
            return ChangePlan.No(ChangeMessages.NotUnderstood(new(files.First(f => f.Source.Path == made.Path).Source, 0, 0)));
        }

        YamlMap wanted = NodeText.Map((addition.Section, NodeText.Map((addition.Name, addition.Body))));
        return Proved([.. _yaml, made], new TextEdit(0, 0, made.Text, wanted, wanted).Explains([wanted], FileText.Parse(made)), new(made.Path, "", made.Text), new(made, 0, 0));
    }

    /// <summary>
    /// The book with files of new entries, or why not: each entry's name is free, no file is there, each is read as it was meant, and the book has no error with all of them. Nothing is written.
    /// </summary>
    /// <returns>A plan for each file; a single one that is refused where something is in the way.</returns>
    public ImmutableArray<ChangePlan> With(IReadOnlyList<NewFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return WhyNot(files) is { } why ? [ChangePlan.No(why)]
            : Proved([.. _yaml, .. files.Select(f => f.Source)], files.All(IsReadAsMeant), new("", "", ""), new(files[0].Source, 0, 0)) is { File: null } refused ? [refused]
            : [.. files.Select(f => new ChangePlan(new(f.Path, "", f.Source.Text), null))];
    }

    private string? WhyNot(IReadOnlyList<NewFile> files)
    {
        if (Book is null)
        {
            return ChangeMessages.HasErrors(FirstError!);
        }

        FileText[] there = [.. _yaml.Select(File)];
        return _yaml.FirstOrDefault(y => files.Any(f => string.Equals(y.Path, f.Path, StringComparison.OrdinalIgnoreCase))) is { } file ? ChangeMessages.HasFile(file.Path)
            : files.SelectMany(f => f.Additions).FirstOrDefault(a => AdditionEdit.Has(a, there)) is { } taken ? ChangeMessages.HasAlready(taken.Section, taken.Name)
            : null;
    }

    private static bool IsReadAsMeant(NewFile file)
    {
        YamlMap wanted = file.Tree;
        return new TextEdit(0, 0, file.Source.Text, wanted, wanted).Explains([wanted], FileText.Parse(file.Source));
    }

    private ChangePlan Proved(BookAddition addition, FileText file, TextEdit edit)
    {
        SourceText changed = new(file.Source.Path, edit.Apply(file.Source.Text));
        SourceText[] yaml = [.. _yaml.Select(s => ReferenceEquals(s, file.Source) ? changed : s)];
        bool there = AdditionEdit.Has(addition, [new FileText(changed)]);
        return Proved(yaml, there && edit.Explains(file.Documents, FileText.Parse(changed)), new(file.Source.Path, file.Source.Text, changed.Text), new(file.Source, edit.Start, 0));
    }

    private ChangePlan Proved(SourceText[] yaml, bool explained, ChangedFile file, Span at)
    {
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(yaml, _cards, _kinds, found, _checks);
        return !explained ? ChangePlan.No(ChangeMessages.NotUnderstood(at))
            : book is null ? ChangePlan.No(ChangeMessages.WouldBeWrong(found.First(d => d.Severity == Severity.Error)))
            : new(file, null);
    }
}
