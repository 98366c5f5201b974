namespace Sightglass.Book.Kinds;

public sealed record KindPort(string Name, string Doc);
