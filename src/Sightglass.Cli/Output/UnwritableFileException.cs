namespace Sightglass.Cli.Output;

/// <summary>A file named on the command line cannot be written: the message is for whoever typed the name.</summary>
internal sealed class UnwritableFileException(string message, Exception inner) : Exception(message, inner);
