export function History() {
  return (
    <section className="panel" aria-label="What was changed">
      <h2>What was changed</h2>
    </section>
  );
}
