using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Training;

/// <summary>What somebody may have meant who named an item that the book does not have.</summary>
internal static class BookHint
{
    public static string Of(string item, ClassBook book) => Nearest.Find(item, book.Items.Keys) is { } nearest
        ? Say.With($"Did you mean \"{nearest}\"?")
        : Say.It("Choose one of the list, or leave it empty.");
}
