using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>A train as one book and the context in which its situations are read: their names must be declared in it.</summary>
internal sealed record TrainItems(ClassBook Coupled, ReadContext Context);
