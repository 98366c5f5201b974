namespace Sightglass.Book.Changes;

/// <summary>The book's folder or a file in it cannot be read.</summary>
public sealed class BookUnreadableException(string message) : Exception(message);
