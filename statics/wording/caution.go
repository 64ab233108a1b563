package wording

// Caution stands at the head of whatever shows a solution.
const Caution = "For teaching only: a real structure needs the local codes and a licensed engineer."
