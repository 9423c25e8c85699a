"""Pictures of the drive: the train as a diagram, speeds as a ladder, motion over one turn."""
