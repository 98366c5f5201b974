using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Book.Checks;

/// <summary>A check of a whole book after all of it was read. It is called for the class and for every road number; a finding made twice is reported once.</summary>
public delegate void BookCheck(ClassBook book, DiagnosticList found);
