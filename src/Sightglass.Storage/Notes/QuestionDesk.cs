using Microsoft.EntityFrameworkCore;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Storage.Proposals;
using Sightglass.Training.Proposals;
using Sightglass.Training.Questions;

namespace Sightglass.Storage.Notes;

/// <summary>The questions that were asked about one book's machine.</summary>
/// <param name="data">Where they are kept.</param>
/// <param name="clock">This computer's.</param>
public sealed class QuestionDesk(DataFolder data, TimeProvider clock)
{
    private DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().Date);

    /// <summary>Those without an answer first, by the day they are wanted; then the others, the newest answer first.</summary>
    public IReadOnlyList<OpenQuestion> All(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        using RecordsContext records = data.Records();
        return
        [
            .. records.Questions.AsNoTracking().Where(q => q.Book == book.Title).AsEnumerable()
                .OrderBy(q => q.AnsweredAt is not null).ThenByDescending(q => q.AnsweredAt).ThenBy(q => q.Due).ThenBy(q => q.AskedAt).ThenBy(q => q.Id),
        ];
    }

    /// <summary>Writes a question down.</summary>
    /// <returns>Why not, or null once it is on disk.</returns>
    public string? Ask(ClassBook book, string text, string? item, string askedBy, string owner, DateOnly due)
    {
        ArgumentNullException.ThrowIfNull(book);
        DateTimeOffset now = clock.GetUtcNow();
        OpenQuestion question = new()
        {
            Id = Guid.CreateVersion7(now),
            Book = book.Title,
            Text = text.Trim(),
            Item = string.IsNullOrWhiteSpace(item) ? null : item.Trim(),
            AskedBy = askedBy.Trim(),
            AskedAt = now,
            Owner = owner.Trim(),
            Due = due,
        };
        if (QuestionRules.WhyNot(book, question, Today) is { } why)
        {
            return why;
        }

        using RecordsContext records = data.Records();
        records.Questions.Add(question);
        records.SaveChanges();
        return null;
    }

    /// <summary>Writes an answer down.</summary>
    /// <returns>Why not, or null once it is on disk.</returns>
    public string? Answer(Guid id, string answer, string by)
    {
        using RecordsContext records = data.Records();
        OpenQuestion question = records.Questions.Single(q => q.Id == id);
        if (QuestionRules.WhyNoAnswer(question, answer.Trim(), by) is { } why)
        {
            return why;
        }

        (question.Answer, question.AnsweredBy, question.AnsweredAt) = (answer.Trim(), by.Trim(), clock.GetUtcNow());
        records.SaveChanges();
        return null;
    }

    /// <summary>Proposes that the answer goes into the book, behind what it says of the item.</summary>
    /// <param name="book">As it stands.</param>
    /// <param name="id">Of a question about an item that is answered.</param>
    /// <param name="depth"><c>know</c>, <c>operate</c> or <c>repair</c>.</param>
    /// <returns>Why not, or null once it is on disk.</returns>
    public string? Propose(ClassBook book, Guid id, string depth)
    {
        ArgumentNullException.ThrowIfNull(book);
        using RecordsContext records = data.Records();
        OpenQuestion question = records.Questions.Single(q => q.Id == id);
        if (question.Answer is not { } answer || question.Item is not { } name || !book.Items.TryGetValue(name, out Item? item))
        {
            return Say.It("Only an answer about an item of the book can go into it.");
        }

        if (question.Proposal is not null)
        {
            return Say.It("It is proposed already.");
        }

        string was = depth switch { "know" => item.Texts.Know, "operate" => item.Texts.Operate, _ => item.Texts.Repair };
        DateTimeOffset now = clock.GetUtcNow();
        Proposal proposal = new()
        {
            Id = Guid.CreateVersion7(now),
            Book = book.Title,
            Number = ProposalNumbers.Next(records, book.Title),
            Origin = ProposalOrigin.Question,
            OriginId = id,
            Target = name,
            Property = depth,
            Was = was,
            Becomes = $"{was} {answer}".Trim(),
            Why = $"Asked: {question.Text}",
            By = question.AnsweredBy!,
            At = now,
        };
        question.Proposal = proposal.Id;
        records.Proposals.Add(proposal);
        records.SaveChanges();
        return null;
    }
}
