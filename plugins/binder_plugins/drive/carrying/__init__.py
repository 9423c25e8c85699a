"""What the shafts of a train carry: where things stand on them, pulls, weights, inertia."""
