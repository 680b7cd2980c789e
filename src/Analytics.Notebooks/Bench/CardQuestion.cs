using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Bench;

/// <summary>One thing asked of an idea.</summary>
/// <param name="Question">The question.</param>
/// <param name="Answer">The answer in a few words.</param>
/// <param name="Figure">The figure behind it with its doubt; empty when there is none.</param>
/// <param name="Note">What it rests on; may be empty.</param>
/// <param name="Tone">Colour of the answer; the words say the same.</param>
internal sealed record CardQuestion(string Question, string Answer, string Figure, string Note = "", Tone Tone = Tone.Plain);
