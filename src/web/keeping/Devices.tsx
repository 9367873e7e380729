export function Devices() {
  return (
    <section className="panel" aria-label="Devices">
      <h2>Devices</h2>
    </section>
  );
}
