"""What was written: typed models of a spec, and the reading of a document into them."""
